-- V146__production_guarantees.sql  What a contract says of its promise of production beside the kWh of the first year, which
-- the contract itself holds: the rate that is owed, for how long, how it is settled, what may be missing without payment.
create table guarantee_terms (
    project_id              uuid          primary key,
    branch_id               uuid          not null,
    version                 bigint        not null default 0,
    rate_usd_per_kwh        numeric(7, 4) not null,
    rate_grows_percent      numeric(5, 2) not null,
    years                   integer       not null,
    settled_years           integer       not null,
    promise_fades_percent   numeric(4, 2) not null,
    system_fades_percent    numeric(4, 2) not null,
    free_percent            numeric(4, 1) not null,
    carries_weather         boolean       not null,
    keeps_surplus           boolean       not null,
    begins_on               date,
    constraint guarantee_terms_project foreign key (project_id) references project,
    constraint guarantee_terms_branch foreign key (branch_id) references branch,
    constraint guarantee_terms_rate_range check (rate_usd_per_kwh between 0 and 5),
    constraint guarantee_terms_growth_range check (rate_grows_percent between -10 and 20),
    constraint guarantee_terms_years_range check (years between 1 and 40),
    constraint guarantee_terms_settled_range check (settled_years between 1 and years),
    constraint guarantee_terms_promise_fades_range check (promise_fades_percent between 0 and 5),
    constraint guarantee_terms_system_fades_range check (system_fades_percent between 0 and 5),
    constraint guarantee_terms_free_range check (free_percent between 0 and 30)
);
create index guarantee_terms_of_branch on guarantee_terms (branch_id);
select plumbrow_wall('guarantee_terms');
