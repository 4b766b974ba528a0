-- V143__size_limits.sql  What no system of the branch may exceed: the branch's own policy (no utility) and each utility's
-- cap, as a share of past use and as kW AC.
create table size_limit (
    id                  uuid    primary key,
    branch_id           uuid    not null,
    utility_id          uuid,
    version             bigint  not null default 0,
    most_offset_percent numeric(5, 1),
    most_kw_ac          numeric(8, 1),
    constraint size_limit_branch foreign key (branch_id) references branch,
    constraint size_limit_utility foreign key (utility_id) references utility,
    constraint size_limit_offset_range check (most_offset_percent between 5 and 200),
    constraint size_limit_kw_ac_range check (most_kw_ac between 0.1 and 10000)
);
create unique index size_limit_of_utility on size_limit (branch_id, utility_id) nulls not distinct;
create index size_limit_by_utility on size_limit (utility_id);
select plumbrow_wall('size_limit');
