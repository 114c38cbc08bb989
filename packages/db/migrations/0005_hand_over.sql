-- Handing a match over: one-use codes, each for one lead in place of exactly one lane. SPEC DB20 to DB24.
-- A code names the lane that leads; once another one does it is worth nothing, so nothing has to be used up.

create table hand_over (
  academy_id text not null,
  hand_over_id text not null,
  code_hash text not null unique,
  -- The court's code under which the other person comes in.
  code_id text not null,
  match_id text not null,
  from_lane text not null,
  level text not null check (level in ('score', 'key', 'every')),
  made_at timestamptz not null,
  expires_at timestamptz not null,
  withdrawn_at timestamptz,
  granted_at timestamptz,
  granted_until timestamptz,
  granted_kind text check (granted_kind in ('member', 'courtside')),
  granted_id text,
  primary key (academy_id, hand_over_id),
  foreign key (academy_id, code_id) references court_code,
  foreign key (academy_id, match_id, from_lane) references lane,
  check (num_nulls(granted_at, granted_until, granted_kind, granted_id) in (0, 4))
);
create index hand_over_lane on hand_over (academy_id, match_id, from_lane);

select protect_by_academy('hand_over');

grant select, insert on hand_over to courtloom_app;
grant update (withdrawn_at, granted_at, granted_until, granted_kind, granted_id) on hand_over to courtloom_app;

-- Who types such a code has no academy yet.
grant create on schema public to courtloom_lookup;
create policy lookup on hand_over for select to courtloom_lookup using (true);
grant select on hand_over to courtloom_lookup;

create function find_hand_over(hash text)
returns table (academy_id text, code_id text, kind text, day_id text, court_id text,
               expires_at timestamptz, revoked_at timestamptz,
               hand_over_id text, match_id text, from_lane text, chartist text, level text, leads boolean,
               ends_at timestamptz, withdrawn_at timestamptz,
               granted_until timestamptz, granted_kind text, granted_id text)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select o.academy_id, o.code_id, c.kind, c.day_id, c.court_id, c.expires_at, c.revoked_at,
         o.hand_over_id, o.match_id, o.from_lane, l.chartist, o.level, h.lead_lane is not distinct from o.from_lane,
         o.expires_at, o.withdrawn_at, o.granted_until, o.granted_kind, o.granted_id
  from public.hand_over o
  join public.court_code c on c.academy_id = o.academy_id and c.code_id = o.code_id
  join public.match_head h on h.academy_id = o.academy_id and h.match_id = o.match_id
  join public.lane l on l.academy_id = o.academy_id and l.match_id = o.match_id and l.lane_id = o.from_lane
  where o.code_hash = hash
$$;

revoke all on function find_hand_over(text) from public;
grant execute on function find_hand_over(text) to courtloom_app;
alter function find_hand_over(text) owner to courtloom_lookup;
revoke create on schema public from courtloom_lookup;
