-- V085__forecasts.sql  How likely the dates of a plan are: one row a milestone that is still ahead.
create table plan_forecast (
    plan_id            uuid             not null,
    project_id         uuid             not null,
    milestone          text             not null,
    branch_id          uuid             not null,
    even_chance        date             not null,
    four_in_five       date             not null,
    nineteen_in_twenty date             not null,
    kept_until         date,
    chance_kept        double precision,
    drivers            jsonb            not null,
    runs               int              not null,
    made_at            timestamptz      not null,
    constraint plan_forecast_key primary key (plan_id, project_id, milestone),
    constraint plan_forecast_plan foreign key (plan_id) references plan on delete cascade,
    constraint plan_forecast_project foreign key (project_id) references project,
    constraint plan_forecast_branch foreign key (branch_id) references branch,
    constraint plan_forecast_in_order check (even_chance <= four_in_five and four_in_five <= nineteen_in_twenty),
    constraint plan_forecast_chance check (chance_kept between 0 and 1),
    constraint plan_forecast_chance_of_a_promise check ((kept_until is null) = (chance_kept is null)),
    constraint plan_forecast_runs check (runs > 0)
);
create index plan_forecast_of_project on plan_forecast (project_id);
create index plan_forecast_of_branch on plan_forecast (branch_id);
select plumbrow_wall('plan_forecast');
