-- V051__journal.sql  One chain of lines a project. Lines are only ever added; each carries the hash of the one before.
create table project_journal_head (
    project_id uuid  primary key,
    branch_id  uuid  not null,
    lines      int   not null,
    hash       bytea not null,
    constraint project_journal_head_project foreign key (project_id) references project,
    constraint project_journal_head_branch foreign key (branch_id) references branch
);
create index project_journal_head_of_branch on project_journal_head (branch_id);
select plumbrow_wall('project_journal_head');

create table project_journal (
    project_id    uuid        not null,
    number        int         not null,
    branch_id     uuid        not null,
    kind          text        not null,
    sentence      text        not null,
    facts         text        not null,
    at            timestamptz not null,
    by_person_id  uuid,
    by_name       text        not null,
    previous_hash bytea       not null,
    hash          bytea       not null,
    constraint project_journal_key primary key (project_id, number),
    constraint project_journal_project foreign key (project_id) references project,
    constraint project_journal_branch foreign key (branch_id) references branch,
    constraint project_journal_numbers_from_one check (number >= 1),
    constraint project_journal_hash_length check (length(hash) = 32 and length(previous_hash) = 32)
);
create index project_journal_of_branch on project_journal (branch_id);
select plumbrow_append_only('project_journal');
select plumbrow_wall('project_journal');
