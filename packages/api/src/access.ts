/** Who may call what. `anyone` includes people who are not signed in; `staff` are directors and coaches. */
export const AUDIENCES = ["anyone", "staff", "director"] as const;
export type Audience = (typeof AUDIENCES)[number];

/**
 * The one table of authority: procedure by audience. A procedure that is not named here is refused to
 * everybody, and a test calls every one of them as every role. Rule AP2.
 */
export const ACCESS = {
  "setup.status": "anyone",
  "setup.createAcademy": "anyone",
  "setup.loadDemo": "anyone",
  "account.me": "anyone",
  "account.enterDemo": "anyone",
  "day.list": "staff",
  "day.create": "director",
  "day.get": "staff",
  "match.get": "staff",
  "match.add": "director",
  "match.setCoachingMode": "director",
  "match.log": "staff",
  "match.lanes": "staff",
  "lane.checkFile": "staff",
  "lane.takeInFile": "staff",
  "code.list": "staff",
  "code.issue": "director",
  "code.revoke": "director",
  "code.endPhone": "director",
  "player.list": "staff",
  "player.add": "director",
  "figures.player": "staff",
  "figures.points": "staff",
  "figures.lineMap": "staff",
  "figures.cost": "staff",
  "figures.match": "staff",
  "plan.list": "staff",
  "plan.get": "staff",
  "plan.save": "staff",
  "plan.startFromStarter": "staff",
  "plan.forMatch": "staff",
  "plan.courtWords": "staff",
  "watch.get": "staff",
  "watch.save": "staff",
} as const satisfies Record<string, Audience>;

export type ProcedurePath = keyof typeof ACCESS;

export const isProcedurePath = (path: string): path is ProcedurePath => Object.hasOwn(ACCESS, path);
