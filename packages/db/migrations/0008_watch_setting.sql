-- What is watched of the academy's players: versions of the academy's settings and of single players' own. SPEC WA17 to WA19.
-- A version is only ever added, so that who changed what, and when, stays known.

create table watch_setting (
  academy_id text not null references academy,
  setting_id text not null,
  -- Null: the academy's settings, which hold for everybody without own ones.
  player_id text check (player_id <> ''),
  version integer not null check (version >= 1),
  -- All three null: the player has no own settings any more.
  rates jsonb check (jsonb_typeof(rates) = 'array' and jsonb_array_length(rates) between 1 and 4),
  alpha double precision check (alpha > 0 and alpha <= 0.2),
  quiet boolean,
  saved_by text not null,
  saved_at timestamptz not null default now(),
  primary key (academy_id, setting_id),
  foreign key (academy_id, player_id) references player,
  check (num_nulls(rates, alpha, quiet) in (0, 3)),
  check (player_id is not null or rates is not null)
);
create unique index watch_setting_version on watch_setting (academy_id, coalesce(player_id, ''), version);

select protect_by_academy('watch_setting');

grant select, insert on watch_setting to courtloom_app;
