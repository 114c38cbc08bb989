-- Accounts, which belong to no academy, and what court codes need besides. SPEC AU1 to AU20.

create schema auth;
revoke all on schema auth from public;
grant usage on schema auth to courtloom_auth;

create table auth."user" (
  id text primary key,
  name text not null,
  email text not null unique check (email = lower(email)),
  email_verified boolean not null default false,
  image text,
  created_at timestamptz not null,
  updated_at timestamptz not null
);

create table auth.session (
  id text primary key,
  expires_at timestamptz not null,
  -- SHA-256 of the token, never the token.
  token text not null unique check (token ~ '^[0-9a-f]{64}$'),
  created_at timestamptz not null,
  updated_at timestamptz not null,
  ip_address text,
  user_agent text,
  user_id text not null references auth."user" on delete cascade
);
create index session_by_user on auth.session (user_id);

create table auth.account (
  id text primary key,
  account_id text not null,
  provider_id text not null,
  user_id text not null references auth."user" on delete cascade,
  access_token text,
  refresh_token text,
  id_token text,
  access_token_expires_at timestamptz,
  refresh_token_expires_at timestamptz,
  scope text,
  password text check (password like '$argon2id$%'),
  created_at timestamptz not null,
  updated_at timestamptz not null,
  unique (provider_id, account_id)
);
create index account_user on auth.account (user_id);

create table auth.verification (
  id text primary key,
  identifier text not null,
  value text not null,
  expires_at timestamptz not null,
  created_at timestamptz not null,
  updated_at timestamptz not null
);
create index verification_identifier on auth.verification (identifier);

grant select, insert, update, delete on auth."user", auth.session, auth.account, auth.verification
  to courtloom_auth;

-- A director reads codes out all day: the clear code, sealed with a key that the database does not have.
alter table court_code add column code_sealed text not null;

-- Tries at passwords and codes, under keyed hashes of who tried. No academy is known yet, and no person is told by it.
create table try_count (
  key text primary key,
  uses integer not null check (uses >= 0),
  reset_at timestamptz not null
);
create index try_count_reset on try_count (reset_at);
grant select, insert, update, delete on try_count to courtloom_app;
