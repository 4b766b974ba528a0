-- V241__told_of_a_plan.sql  Who was told of a published plan: crews of their next weeks, customers of the days they live by,
-- utilities. Nobody is told twice of one plan.
create table plan_told (
    plan_id   uuid        not null,
    whom      text        not null,
    about_id  uuid        not null,
    branch_id uuid        not null,
    how       text        not null,
    told_by   text        not null,
    told_at   timestamptz not null,
    constraint plan_told_key primary key (plan_id, whom, about_id),
    constraint plan_told_plan foreign key (plan_id) references plan,
    constraint plan_told_branch foreign key (branch_id) references branch,
    constraint plan_told_whom_known check (whom in ('CREW', 'CUSTOMER', 'UTILITY')),
    constraint plan_told_how_known check (how in ('NOTICE', 'SPOKEN'))
);
create index plan_told_of_branch on plan_told (branch_id);
select plumbrow_wall('plan_told');
