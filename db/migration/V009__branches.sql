-- V009__branches.sql  The firm and its branches: what every wall stands on. Settings of a branch come with its own room.
create table firm (
    id        uuid primary key,
    only_one  boolean not null default true,
    name      text    not null,
    version   bigint  not null default 0,
    constraint firm_is_the_only_one unique (only_one),
    constraint firm_only_one_is_true check (only_one),
    constraint firm_name_given check (length(trim(name)) between 1 and 120)
);

create table branch (
    id      uuid primary key,
    code    text   not null,
    name    text   not null,
    zone    text   not null,
    version bigint not null default 0,
    constraint branch_code_taken unique (code),
    constraint branch_code_form check (code ~ '^[A-Z]{2,6}$'),
    constraint branch_name_given check (length(trim(name)) between 1 and 120)
);
