-- V258__worked_days.sql  Days on which the branch's crews work though they otherwise would not: Saturdays agreed on for a while.
-- Offices and utilities count their own days whatever crews do.
create table worked_day (
    branch_id uuid not null,
    day       date not null,
    reason    text not null,
    constraint worked_day_once primary key (branch_id, day),
    constraint worked_day_branch foreign key (branch_id) references branch,
    constraint worked_day_reason_given check (length(trim(reason)) between 1 and 120)
);
select plumbrow_wall('worked_day');
