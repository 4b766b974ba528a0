-- V145__savings_of_a_project.sql  What a project's savings are worked out with, once somebody has written it down: the price
-- of a kWh and how it rises, what a given kWh is credited, fixed charges, fading, upkeep, discount, the range, a loan, and
-- money from others line by line. The price stands in the contract, production and use in their own tables. Nothing that is
-- worked out is kept.
create table savings_terms (
    project_id                uuid     primary key,
    branch_id                 uuid     not null,
    version                   bigint   not null default 0,
    years                     smallint not null,
    rate_per_kwh              numeric  not null,
    escalation_percent        numeric  not null,
    export_per_kwh            numeric  not null,
    export_escalation_percent numeric  not null,
    fixed_before_usd          numeric  not null,
    fixed_after_usd           numeric  not null,
    degradation_percent       numeric  not null,
    upkeep_usd                numeric  not null,
    upkeep_escalation_percent numeric  not null,
    discount_percent          numeric  not null,
    confidence_percent        numeric  not null,
    apart_percent             numeric  not null,
    loan_usd                  numeric,
    loan_percent              numeric,
    loan_months               smallint,
    constraint savings_terms_project foreign key (project_id) references project,
    constraint savings_terms_branch foreign key (branch_id) references branch,
    constraint savings_terms_years_range check (years between 1 and 40),
    constraint savings_terms_rate_range check (rate_per_kwh between 0 and 5),
    constraint savings_terms_escalation_range check (escalation_percent between -5 and 15),
    constraint savings_terms_export_range check (export_per_kwh between 0 and 5),
    constraint savings_terms_export_escalation_range check (export_escalation_percent between -5 and 15),
    constraint savings_terms_fixed_range check (fixed_before_usd between 0 and 10000 and fixed_after_usd between 0 and 10000),
    constraint savings_terms_degradation_range check (degradation_percent between 0 and 5),
    constraint savings_terms_upkeep_range check (upkeep_usd between 0 and 10000000),
    constraint savings_terms_upkeep_escalation_range check (upkeep_escalation_percent between -5 and 15),
    constraint savings_terms_discount_range check (discount_percent between -5 and 50),
    constraint savings_terms_confidence_range check (confidence_percent between 50 and 99),
    constraint savings_terms_apart_range check (apart_percent between 0 and 5),
    constraint savings_terms_loan_whole check (num_nulls(loan_usd, loan_percent, loan_months) in (0, 3)),
    constraint savings_terms_loan_range check (
        loan_usd between 0 and 100000000 and loan_percent between 0 and 50 and loan_months between 1 and 600)
);
create index savings_terms_of_branch on savings_terms (branch_id);
select plumbrow_wall('savings_terms');

create table savings_incentive (
    project_id uuid     not null,
    place      smallint not null,
    branch_id  uuid     not null,
    name       text     not null,
    kind       text     not null,
    amount     numeric  not null,
    first_year smallint not null,
    years      smallint not null,
    constraint savings_incentive_place primary key (project_id, place),
    constraint savings_incentive_of_terms foreign key (project_id) references savings_terms,
    constraint savings_incentive_branch foreign key (branch_id) references branch,
    constraint savings_incentive_name_length check (length(name) between 1 and 60),
    constraint savings_incentive_kind_known check (kind in ('AMOUNT', 'SHARE_OF_PRICE', 'PER_KWH')),
    constraint savings_incentive_amount_range check (
        amount between 0 and case kind when 'AMOUNT' then 100000000 when 'SHARE_OF_PRICE' then 1 else 5 end),
    constraint savings_incentive_first_year_range check (first_year between 0 and 40),
    constraint savings_incentive_years_range check (years between 1 and 40)
);
create index savings_incentive_of_branch on savings_incentive (branch_id);
select plumbrow_wall('savings_incentive');
