-- Alerts: what was raised, whom it was told to, and what people did about it. SPEC AL10 to AL16.
-- What an alert says follows from the match log; here is what the log cannot know: its number, when it was raised,
-- and what must not happen twice.

create table alert (
  academy_id text not null,
  match_id text not null,
  player_id text not null,
  rate text not null check (rate <> ''),
  version integer not null check (version >= 1),
  -- Of its watch: 1, 2, 3 …, those withdrawn counted too; never used again.
  episode integer not null check (episode >= 1),
  side text not null check (side in ('A', 'B')),
  -- The point that raised it, as it stood then.
  raised_entry text not null,
  raised_pos integer not null check (raised_pos >= 1),
  raised_at timestamptz not null,
  state text not null check (state in ('standing', 'easing', 'closed', 'withdrawn')),
  -- Of the log that state and figures are of; an older one changes nothing.
  pos integer not null check (pos >= raised_pos),
  -- json, not jsonb: the text stays as it was written, so that what is said can be compared with it.
  said json not null,
  withdrawn_at timestamptz,
  withdrawn_entry text,
  withdrawn_lane text,
  primary key (academy_id, match_id, player_id, rate, version, episode),
  foreign key (academy_id, match_id) references match,
  check ((state = 'withdrawn') = (withdrawn_at is not null))
);

-- The ledger: who inserts the row tells the person, so that nobody is told twice.
create table alert_notice (
  academy_id text not null,
  match_id text not null,
  player_id text not null,
  rate text not null,
  version integer not null,
  episode integer not null,
  transition text not null check (transition in ('raised')),
  recipient text not null check (recipient <> ''),
  channel text not null check (channel in ('app')),
  -- Changes of ends, ends of sets and of the match until then.
  at_break integer not null check (at_break >= 0),
  given_at timestamptz not null,
  primary key (academy_id, match_id, player_id, rate, version, episode, transition, recipient, channel),
  foreign key (academy_id, match_id, player_id, rate, version, episode) references alert
);

-- What people did about an alert, in order; only ever added to.
create table alert_mark (
  academy_id text not null,
  match_id text not null,
  player_id text not null,
  rate text not null,
  version integer not null,
  episode integer not null,
  n integer not null check (n >= 1),
  kind text not null check (kind in ('seen', 'assign', 'snooze', 'wake', 'useful')),
  by_member text not null check (by_member <> ''),
  made_at timestamptz not null,
  details json not null,
  primary key (academy_id, match_id, player_id, rate, version, episode, n),
  foreign key (academy_id, match_id, player_id, rate, version, episode) references alert
);

select protect_by_academy(name::regclass) from unnest(array['alert', 'alert_notice', 'alert_mark']) as name;

grant select, insert on alert, alert_notice, alert_mark to courtloom_app;
grant update (state, pos, said, withdrawn_at, withdrawn_entry, withdrawn_lane) on alert to courtloom_app;
