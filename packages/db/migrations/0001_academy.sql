-- Academies, people, days, matches, tallies, court codes and the audit. SPEC DB1 to DB8.
-- The roles courtloom_app, courtloom_auth and courtloom_lookup exist before the first migration runs.

revoke create on schema public from public;
grant usage on schema public to courtloom_app, courtloom_lookup;

-- Every table with an academy_id is protected by this, in the migration that makes it. Without a tenant
-- the setting is null or empty, and no row has such an academy_id.
create function protect_by_academy(target regclass) returns void
language plpgsql set search_path = pg_catalog, pg_temp as $$
begin
  execute format('alter table %s enable row level security', target);
  execute format('alter table %s force row level security', target);
  execute format(
    'create policy by_academy on %s for all to courtloom_app
       using (academy_id = current_setting(''courtloom.academy_id'', true))
       with check (academy_id = current_setting(''courtloom.academy_id'', true))', target);
end
$$;
revoke all on function protect_by_academy(regclass) from public;

create table academy (
  academy_id text primary key check (academy_id <> ''),
  name text not null check (name <> ''),
  time_zone text not null,
  language text not null,
  is_demo boolean not null default false,
  created_at timestamptz not null default now()
);

create table member (
  academy_id text not null references academy,
  member_id text not null,
  role text not null check (role in ('director', 'coach')),
  display_name text not null check (display_name <> ''),
  user_id text,
  created_at timestamptz not null default now(),
  primary key (academy_id, member_id),
  unique (academy_id, user_id)
);
create index member_user on member (user_id);

create table player (
  academy_id text not null references academy,
  player_id text not null,
  display_name text not null,
  hand text not null check (hand in ('right', 'left', 'unknown')),
  birth_year smallint check (birth_year between 1900 and 2200),
  squad text,
  own boolean not null,
  level smallint,
  created_at timestamptz not null default now(),
  primary key (academy_id, player_id)
);
create index player_name on player (academy_id, own, display_name);

create table day (
  academy_id text not null references academy,
  day_id text not null,
  name text not null,
  date date not null,
  created_at timestamptz not null default now(),
  primary key (academy_id, day_id)
);
create index day_date on day (academy_id, date desc);

create table court (
  academy_id text not null,
  day_id text not null,
  court_id text not null,
  no smallint not null check (no >= 1),
  name text not null,
  primary key (academy_id, court_id),
  unique (academy_id, day_id, no),
  unique (academy_id, day_id, court_id),
  foreign key (academy_id, day_id) references day
);

create table match (
  academy_id text not null,
  match_id text not null,
  day_id text,
  court_id text,
  order_no integer not null check (order_no >= 1),
  title text not null default '',
  played_on date not null,
  player_a text not null,
  player_b text not null,
  partner_a text,
  partner_b text,
  match_format json not null,
  first_server text check (first_server in ('A', 'B')),
  doubles boolean not null default false,
  coaching_mode text not null check (coaching_mode in ('practice', 'permitted', 'notPermitted', 'notKnown')),
  subjects text[] not null check (subjects <@ array['A', 'B']),
  created_at timestamptz not null default now(),
  opened_at timestamptz,
  over_at timestamptz,
  sealed_at timestamptz,
  primary key (academy_id, match_id),
  foreign key (academy_id) references academy,
  foreign key (academy_id, day_id) references day,
  foreign key (academy_id, day_id, court_id) references court (academy_id, day_id, court_id),
  foreign key (academy_id, player_a) references player,
  foreign key (academy_id, player_b) references player,
  foreign key (academy_id, partner_a) references player,
  foreign key (academy_id, partner_b) references player,
  check (court_id is null or day_id is not null),
  check (doubles = (partner_a is not null and partner_b is not null)),
  check (player_a <> player_b)
);
create index match_day on match (academy_id, day_id, court_id, order_no);

create table tally (
  academy_id text not null,
  player_id text not null,
  match_id text not null,
  played_on date not null,
  version text not null,
  tally json not null,
  written_at timestamptz not null default now(),
  primary key (academy_id, player_id, match_id),
  foreign key (academy_id, match_id) references match,
  foreign key (academy_id, player_id) references player
);
create index tally_player on tally (academy_id, player_id, played_on desc, match_id);
create index tally_date on tally (academy_id, played_on desc, match_id);

create table court_code (
  academy_id text not null,
  code_id text not null,
  code_hash text not null unique,
  kind text not null check (kind in ('court', 'wall')),
  day_id text not null,
  court_id text,
  created_by text,
  created_at timestamptz not null default now(),
  expires_at timestamptz not null,
  revoked_at timestamptz,
  primary key (academy_id, code_id),
  foreign key (academy_id, day_id) references day,
  foreign key (academy_id, day_id, court_id) references court (academy_id, day_id, court_id),
  check ((kind = 'court') = (court_id is not null))
);
create index court_code_day on court_code (academy_id, day_id);

create table courtside_session (
  academy_id text not null,
  session_id text not null,
  token_hash text not null unique,
  code_id text not null,
  name text not null,
  created_at timestamptz not null default now(),
  seen_at timestamptz,
  expires_at timestamptz not null,
  revoked_at timestamptz,
  primary key (academy_id, session_id),
  foreign key (academy_id, code_id) references court_code
);
create index courtside_session_code on courtside_session (academy_id, code_id);

create table audit (
  academy_id text not null references academy,
  audit_id uuid not null default gen_random_uuid(),
  at timestamptz not null default now(),
  actor text not null,
  action text not null,
  subject text,
  detail json,
  primary key (academy_id, audit_id)
);
create index audit_at on audit (academy_id, at);

select protect_by_academy(name::regclass)
from unnest(array['academy', 'member', 'player', 'day', 'court', 'match', 'tally',
                  'court_code', 'courtside_session', 'audit']) as name;

grant select, update (name, time_zone, language) on academy to courtloom_app;
grant select, insert, update on member, player, day, court, match, tally to courtloom_app;
grant select, insert on court_code, courtside_session to courtloom_app;
grant update (expires_at, revoked_at) on court_code to courtloom_app;
grant update (name, seen_at, expires_at, revoked_at) on courtside_session to courtloom_app;
grant insert on audit to courtloom_app;
