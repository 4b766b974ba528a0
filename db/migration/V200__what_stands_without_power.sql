-- V200__what_stands_without_power.sql  What on a site suffers without power, kind by kind as people wrote it, each kind with
-- a version of its own: two people at the tank and at the generator never meet. How long it stands is computed at each visit.
create table site_load (
    project_id uuid        not null,
    kind       text        not null,
    branch_id  uuid        not null,
    version    bigint      not null default 0,
    rows       jsonb       not null,
    changed_at timestamptz not null,
    changed_by text        not null,
    constraint site_load_key primary key (project_id, kind),
    constraint site_load_project foreign key (project_id) references project,
    constraint site_load_branch foreign key (branch_id) references branch,
    constraint site_load_kind_known check
        (kind in ('HOUSES', 'TANK', 'STORES', 'GREENHOUSES', 'HOME', 'GENERATOR', 'LOADS', 'TIMES'))
);
create index site_load_of_branch on site_load (branch_id);
select plumbrow_wall('site_load');
