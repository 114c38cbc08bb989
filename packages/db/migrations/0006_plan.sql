-- Plans and their versions: one plan of the academy, at most one of each player over it. SPEC DB50 to DB55.
-- A version is only ever added, so that what a match froze can be read for as long as the match can.

create table plan (
  academy_id text not null references academy,
  plan_id text not null,
  -- Null: the academy's own plan, which holds for everybody.
  player_id text check (player_id <> ''),
  created_at timestamptz not null default now(),
  primary key (academy_id, plan_id),
  foreign key (academy_id, player_id) references player
);
create unique index plan_of on plan (academy_id, coalesce(player_id, ''));

create table plan_version (
  academy_id text not null,
  plan_id text not null,
  version integer not null check (version >= 1),
  -- Of a player's plan: how many versions the academy's plan had then.
  on_version integer not null check (on_version >= 0),
  words text not null,
  rules jsonb not null,
  replaces jsonb not null,
  leaves_out jsonb not null,
  rule_words jsonb not null,
  note text not null,
  saved_by text not null,
  saved_at timestamptz not null default now(),
  primary key (academy_id, plan_id, version),
  foreign key (academy_id, plan_id) references plan
);

select protect_by_academy(name::regclass) from unnest(array['plan', 'plan_version']) as name;

grant select, insert on plan, plan_version to courtloom_app;
