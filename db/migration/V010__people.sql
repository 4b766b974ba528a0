-- V010__people.sql  People who sign in, and what they are in a branch. Several roles in a branch are several rows.
create table person (
    id             uuid primary key,
    version        bigint      not null default 0,
    email          text        not null,
    name           text        not null,
    password_hash  text,
    owns_firm      boolean     not null default false,
    ended_at       timestamptz,
    last_branch_id uuid,
    created_at     timestamptz not null,
    constraint person_last_branch foreign key (last_branch_id) references branch on delete set null,
    constraint person_email_lower check (email = lower(email)),
    constraint person_email_taken unique (email),
    constraint person_name_given check (length(trim(name)) between 1 and 120)
);
create index person_of_last_branch on person (last_branch_id);

create table membership (
    person_id  uuid        not null,
    branch_id  uuid        not null,
    role       text        not null,
    since      timestamptz not null,
    constraint membership_key primary key (person_id, branch_id, role),
    constraint membership_person foreign key (person_id) references person,
    constraint membership_branch foreign key (branch_id) references branch,
    constraint membership_role_known check (role in ('MANAGER', 'PROJECT_MANAGER', 'DESIGNER', 'CREW_LEAD'))
);
create index membership_of_branch on membership (branch_id);
select plumbrow_wall('membership');
