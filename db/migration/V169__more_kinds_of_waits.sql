-- V169__more_kinds_of_waits.sql  A building permit beside the electrical one, the trench's inspection beside the foundation's,
-- and the final one: each answers an item of a gate of its own.
alter table awaited drop constraint awaited_kind_known;
alter table awaited add constraint awaited_kind_known check (kind in ('PERMIT', 'BUILDING_PERMIT', 'ZONING', 'INTERCONNECTION',
    'AGREEMENT', 'PERMISSION', 'LOCATE', 'RACKING_DELIVERY', 'MODULES_DELIVERY', 'INVERTERS_DELIVERY', 'GEAR_DELIVERY',
    'GROUND_INSPECTION', 'TRENCH_INSPECTION', 'SERVICE_INSPECTION', 'INSPECTION', 'FINAL_INSPECTION', 'STRUCTURAL_LETTER',
    'GROUND_TEST'));
