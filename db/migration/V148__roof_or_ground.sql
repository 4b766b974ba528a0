-- V148__roof_or_ground.sql  Where the array is to stand, as it was decided with the customer: the newest word only, as the
-- journal keeps the earlier ones. While nothing is decided it may say what is still open.
create table placement (
    project_id   uuid   primary key,
    branch_id    uuid   not null,
    version      bigint not null default 0,
    choice       text   not null,
    decided_by   text   not null,
    decided_with text   not null,
    decided_on   date,
    reason       text   not null,
    constraint placement_project foreign key (project_id) references project,
    constraint placement_branch foreign key (branch_id) references branch,
    constraint placement_choice_known check (choice in ('ROOF', 'GROUND', 'BOTH', 'NOT_YET')),
    constraint placement_decided_by_length check (length(decided_by) <= 120),
    constraint placement_decided_with_length check (length(decided_with) <= 120),
    constraint placement_reason_given check (length(reason) between 1 and 500),
    constraint placement_says_who_and_when check (
        choice = 'NOT_YET' or (decided_by <> '' and decided_with <> '' and decided_on is not null))
);
create index placement_of_branch on placement (branch_id);
select plumbrow_wall('placement');
