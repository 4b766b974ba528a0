-- V012__former_members.sql  Whose last role in a branch was taken away: so that whoever took it can give it back.
create table former_member (
    branch_id uuid        not null,
    person_id uuid        not null,
    ended_at  timestamptz not null,
    constraint former_member_key primary key (branch_id, person_id),
    constraint former_member_branch foreign key (branch_id) references branch,
    constraint former_member_person foreign key (person_id) references person
);
create index former_member_of_person on former_member (person_id);
select plumbrow_wall('former_member');

-- The first run without the demo: one code for the whole installation, printed to the log of the node started last.
create table first_run_code (
    only_one  boolean     primary key default true,
    code_hash text        not null,
    made_at   timestamptz not null,
    misses    int         not null default 0,
    constraint first_run_code_is_the_only_one check (only_one)
);
