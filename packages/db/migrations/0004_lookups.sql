-- What has to be found before the academy is known. Each function answers one question; they belong to a
-- role that nobody can sign in as and that sees only these columns. SPEC DB6.

grant create on schema public to courtloom_lookup;

create policy lookup on academy for select to courtloom_lookup using (true);
create policy lookup_insert on academy for insert to courtloom_lookup with check (true);
create policy lookup on member for select to courtloom_lookup using (true);
create policy lookup_insert on member for insert to courtloom_lookup with check (true);
create policy lookup on court_code for select to courtloom_lookup using (true);
create policy lookup on courtside_session for select to courtloom_lookup using (true);
create policy lookup on match for select to courtloom_lookup using (true);
create policy lookup on match_head for select to courtloom_lookup using (true);
create policy lookup on lane for select to courtloom_lookup using (true);
create policy lookup on heard for select to courtloom_lookup using (true);

grant select (academy_id, name, is_demo), insert on academy to courtloom_lookup;
grant select (academy_id, member_id, role, display_name, user_id), insert on member to courtloom_lookup;
grant select (academy_id, code_id, code_hash, kind, day_id, court_id, expires_at, revoked_at)
  on court_code to courtloom_lookup;
grant select (academy_id, session_id, token_hash, code_id, name, expires_at, revoked_at)
  on courtside_session to courtloom_lookup;
grant select (academy_id, match_id, day_id, court_id) on match to courtloom_lookup;
grant select on match_head, heard to courtloom_lookup;
grant select (academy_id, match_id, lane_id, chartist, level) on lane to courtloom_lookup;

create function find_code(hash text)
returns table (academy_id text, code_id text, kind text, day_id text, court_id text,
               expires_at timestamptz, revoked_at timestamptz)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select c.academy_id, c.code_id, c.kind, c.day_id, c.court_id, c.expires_at, c.revoked_at
  from public.court_code c where c.code_hash = hash
$$;

-- A session ends with its code: the earlier expiry, and either revocation, hold.
create function find_courtside_session(hash text)
returns table (academy_id text, session_id text, name text, code_id text, kind text, day_id text, court_id text,
               expires_at timestamptz, revoked_at timestamptz)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select s.academy_id, s.session_id, s.name, s.code_id, c.kind, c.day_id, c.court_id,
         least(s.expires_at, c.expires_at), coalesce(s.revoked_at, c.revoked_at)
  from public.courtside_session s
  join public.court_code c on c.academy_id = s.academy_id and c.code_id = s.code_id
  where s.token_hash = hash
$$;

create function find_member(account text)
returns table (academy_id text, academy_name text, is_demo boolean, member_id text, role text, display_name text)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select m.academy_id, a.name, a.is_demo, m.member_id, m.role, m.display_name
  from public.member m join public.academy a on a.academy_id = m.academy_id
  where m.user_id = account
  order by a.is_demo, m.academy_id
$$;

create function has_any_academy() returns boolean
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select exists (select from public.academy where not is_demo)
$$;

create function demo_academy() returns text
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  select academy_id from public.academy where is_demo
$$;

-- Set-up: the first academy with its first director, or the demonstration one. False if there is one of its kind.
create function create_academy(new_academy text, academy_name text, zone text, lang text, demo boolean,
                               new_member text, member_name text, account text)
returns boolean
language plpgsql security definer set search_path = pg_catalog, pg_temp as $$
begin
  perform pg_advisory_xact_lock(hashtext('courtloom.create_academy'));
  if exists (select from public.academy a where a.is_demo = demo) then
    return false;
  end if;
  insert into public.academy (academy_id, name, time_zone, language, is_demo)
  values (new_academy, academy_name, zone, lang, demo);
  insert into public.member (academy_id, member_id, role, display_name, user_id)
  values (new_academy, new_member, 'director', member_name, account);
  return true;
end
$$;

-- Heads that changed after `since`; null: of all matches that are open and not sealed.
create function read_heads(since timestamptz)
returns table (academy_id text, match_id text, day_id text, court_id text, pos integer, epoch integer,
               lead_lane text, chartist text, level text, sealed boolean, heard_at timestamptz, unsent integer)
language sql stable security definer set search_path = pg_catalog, pg_temp as $$
  with wanted as (
    select u.academy_id, u.match_id from public.match_head u where since is null and not u.sealed
    union
    select c.academy_id, c.match_id from public.match_head c where c.changed_at > since
    union
    select c.academy_id, c.match_id from public.heard c where c.changed_at > since
  )
  select h.academy_id, h.match_id, m.day_id, m.court_id, h.pos, h.epoch,
         h.lead_lane, l.chartist, l.level, h.sealed, b.heard_at, b.unsent
  from wanted w
  join public.match_head h on h.academy_id = w.academy_id and h.match_id = w.match_id
  join public.match m on m.academy_id = h.academy_id and m.match_id = h.match_id
  left join public.lane l
    on l.academy_id = h.academy_id and l.match_id = h.match_id and l.lane_id = h.lead_lane
  left join public.heard b on b.academy_id = h.academy_id and b.match_id = h.match_id
$$;

do $$
declare
  lookup regprocedure;
begin
  foreach lookup in array array[
    'find_code(text)', 'find_courtside_session(text)', 'find_member(text)', 'has_any_academy()', 'demo_academy()',
    'create_academy(text, text, text, text, boolean, text, text, text)', 'read_heads(timestamptz)'
  ]::regprocedure[] loop
    execute format('revoke all on function %s from public', lookup);
    execute format('grant execute on function %s to courtloom_app', lookup);
    execute format('alter function %s owner to courtloom_lookup', lookup);
  end loop;
end
$$;

revoke create on schema public from courtloom_lookup;
