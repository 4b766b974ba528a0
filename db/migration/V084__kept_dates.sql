-- A plan may hold a start back on the date that people know: one more thing that binds a date.
alter table planned_activity drop constraint planned_activity_bound_known;
alter table planned_activity add constraint planned_activity_bound_known check (bound_kind in
    ('TODAY', 'RELEASED', 'AFTER', 'CREW_BUSY', 'CREW_AWAY', 'EQUIPMENT_BUSY', 'EQUIPMENT_AWAY', 'DAY_OFF', 'PIN',
     'KEPT', 'UNDERWAY', 'FINISHED', 'JUST_IN_TIME'));
