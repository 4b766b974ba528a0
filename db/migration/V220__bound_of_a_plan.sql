-- V220__bound_of_a_plan.sql  What is proved about all other plans, stored with the plan; unknown of plans made before.
alter table plan add column lower_bound bigint;
alter table plan add constraint plan_bound_not_above_lateness check (lower_bound >= 0 and lower_bound <= half_days_late);

-- half-days late in any plan, for the project's own chain of work and waits
alter table planned_promise add column late_alone int;
alter table planned_promise add constraint planned_promise_late_alone_not_above_late check
    (late_alone >= 0 and (finish_half_day is null or late_alone <= half_days_late));
