-- The design of a project: parts with a version each, so that two designers at different parts never meet; revisions that
-- left the house, kept as they were; and what a later change has made stale.
create table equipment (
    id uuid primary key,
    version bigint not null default 0,
    branch_id uuid not null constraint equipment_branch references branch,
    kind text not null constraint equipment_kind_known check (kind in ('MODULE', 'INVERTER')),
    name text not null constraint equipment_name_length check (length(name) between 1 and 80),
    content jsonb not null,
    ended boolean not null default false
);
create unique index equipment_named_once on equipment (branch_id, kind, lower(name));
select plumbrow_wall('equipment');

create table design (
    project_id uuid primary key constraint design_project references project,
    branch_id uuid not null constraint design_branch references branch,
    requested_at timestamptz not null,
    requested_by text not null,
    wanted_on date
);
create index design_of_branch on design (branch_id);
select plumbrow_wall('design');

create table design_part (
    project_id uuid not null constraint design_part_project references design,
    part text not null,
    branch_id uuid not null constraint design_part_branch references branch,
    version bigint not null default 0,
    rows jsonb not null,
    changed_at timestamptz not null,
    changed_by text not null,
    constraint design_part_pk primary key (project_id, part)
);
create index design_part_of_branch on design_part (branch_id);
select plumbrow_wall('design_part');

create table design_revision (
    id uuid primary key,
    branch_id uuid not null constraint design_revision_branch references branch,
    project_id uuid not null constraint design_revision_project references design,
    letter text not null constraint design_revision_letter check (letter ~ '^[A-Z]{1,2}$'),
    facts jsonb not null,
    parts jsonb not null,
    why text not null,
    frozen_at timestamptz not null,
    frozen_by text not null,
    constraint design_revision_once unique (project_id, letter)
);
create index design_revision_of_branch on design_revision (branch_id);
select plumbrow_wall('design_revision');
select plumbrow_append_only('design_revision');

create table stale_document (
    id uuid primary key,
    version bigint not null default 0,
    branch_id uuid not null constraint stale_document_branch references branch,
    project_id uuid not null constraint stale_document_project references design,
    revision_id uuid not null constraint stale_document_revision references design_revision,
    document text not null,
    because text not null,
    closed_how text constraint stale_document_closed_how check (closed_how in ('RENEWED', 'NOT_TOUCHED')),
    closed_note text not null default '',
    closed_at timestamptz,
    closed_by text,
    constraint stale_document_closed_whole check ((closed_how is null) = (closed_at is null)),
    constraint stale_document_once unique (revision_id, document)
);
create index stale_document_of_project on stale_document (project_id);
create index stale_document_of_branch on stale_document (branch_id);
select plumbrow_wall('stale_document');
