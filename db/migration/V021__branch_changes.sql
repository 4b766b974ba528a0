-- V021__branch_changes.sql  Who changed which setting of a branch, when, from what to what. Never rewritten.
create table branch_change (
    id          uuid        primary key,
    branch_id   uuid        not null,
    at          timestamptz not null,
    person_id   uuid,
    person_name text        not null,
    thing       text        not null,
    field       text        not null,
    was         text        not null,
    now         text        not null,
    constraint branch_change_branch foreign key (branch_id) references branch,
    constraint branch_change_person foreign key (person_id) references person
);
create index branch_change_newest on branch_change (branch_id, at desc, id desc);
create index branch_change_of_person on branch_change (person_id);
select plumbrow_wall('branch_change');
select plumbrow_append_only('branch_change');
