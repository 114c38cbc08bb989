-- The match log. SPEC ES1 to ES16. Entries are only ever added: the application may neither change nor delete one.

create table log_meta (
  one boolean primary key default true check (one),
  incarnation text not null,
  began_at timestamptz not null default now()
);
insert into log_meta (incarnation) values (gen_random_uuid()::text);
grant select on log_meta to courtloom_app;

create table match_head (
  academy_id text not null,
  match_id text not null,
  pos integer not null check (pos >= 1),
  epoch integer not null default 0,
  lead_lane text,
  sealed boolean not null default false,
  changed_at timestamptz not null default clock_timestamp(),
  primary key (academy_id, match_id),
  foreign key (academy_id, match_id) references match
);
create index match_head_changed on match_head (changed_at);
create index match_head_unsealed on match_head (academy_id) where not sealed;

create table lane (
  academy_id text not null,
  match_id text not null,
  lane_id text not null,
  chartist text not null,
  owner_kind text not null check (owner_kind in ('desk', 'member', 'courtside')),
  owner_id text not null,
  level text not null check (level in ('score', 'key', 'every')),
  epoch integer not null,
  cursor integer not null default 0 check (cursor >= 0),
  created_at timestamptz not null default now(),
  primary key (academy_id, match_id, lane_id),
  foreign key (academy_id, match_id) references match_head
);

create table entry (
  academy_id text not null,
  match_id text not null,
  pos integer not null check (pos >= 1),
  lane_id text not null,
  n integer not null check (n >= 1),
  entry_id text not null,
  epoch integer not null,
  hash bytea not null check (octet_length(hash) = 32),
  -- json, not jsonb: the text stays as it was written, so that a replay gives the same bytes.
  entry json not null,
  recv_at timestamptz not null default now(),
  primary key (academy_id, match_id, pos),
  unique (academy_id, match_id, lane_id, n),
  unique (academy_id, match_id, entry_id),
  foreign key (academy_id, match_id, lane_id) references lane
);

-- What a phone sent and nobody can read, or it was not allowed to say: kept as it came, beside the log.
create table rejected_entry (
  academy_id text not null,
  match_id text not null,
  lane_id text not null,
  n integer not null check (n >= 1),
  code text not null check (code in ('bad_shape', 'not_allowed')),
  hash bytea not null check (octet_length(hash) = 32),
  raw text not null,
  recv_at timestamptz not null default now(),
  primary key (academy_id, match_id, lane_id, n),
  foreign key (academy_id, match_id, lane_id) references lane
);

-- Apart from the head, so that a phone's "I am here" never waits for a batch of another.
create table heard (
  academy_id text not null,
  match_id text not null,
  heard_at timestamptz not null,
  unsent integer not null check (unsent >= 0),
  changed_at timestamptz not null default clock_timestamp(),
  primary key (academy_id, match_id),
  foreign key (academy_id, match_id) references match_head
);
create index heard_changed on heard (changed_at);

select protect_by_academy(name::regclass)
from unnest(array['match_head', 'lane', 'entry', 'rejected_entry', 'heard']) as name;

grant select, insert, update on match_head, lane, heard to courtloom_app;
grant select, insert on entry, rejected_entry to courtloom_app;
