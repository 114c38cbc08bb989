-- What an academy's players did together, as fitted after a match, each fit with its version. SPEC DB70 to DB73.
-- A version is only ever added: a match freezes which one it began with, and is read beside that one afterwards.

create table choice_fit (
  academy_id text not null references academy,
  version integer not null check (version >= 1),
  -- Sum of the own players' tallies, spreads, and from how many players and matches.
  fit json not null,
  fitted_at timestamptz not null default now(),
  primary key (academy_id, version)
);

select protect_by_academy('choice_fit');

grant select, insert on choice_fit to courtloom_app;

-- What a court is made of: of a day, and of a match where it differs. Null: not known.
alter table day add column surface text
  check (surface in ('hard', 'clay', 'grass', 'artificialGrass', 'carpet'));
alter table match add column surface text
  check (surface in ('hard', 'clay', 'grass', 'artificialGrass', 'carpet'));
