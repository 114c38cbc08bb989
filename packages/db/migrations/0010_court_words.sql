-- One sentence and one question of a plan for a change of ends. Versions of before have none. SPEC DB56.

alter table plan_version
  add column sentence text not null default '',
  add column question text not null default '';

-- From now on a version says both, if only that there is none.
alter table plan_version
  alter column sentence drop default,
  alter column question drop default;
