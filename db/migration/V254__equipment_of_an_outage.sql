-- V254__equipment_of_an_outage.sql  Shared machines that the work of an outage needs: a lift at a mast, a trencher at a lateral.
-- None where nobody has said so: most cutovers need only what each crew has of its own.
alter table outage_work add column equipment text[] not null default '{}';
alter table outage_work add constraint outage_work_equipment check (equipment <@ array['POST_DRIVER', 'SCREW_DRIVE', 'AUGER',
    'MIXER', 'HOIST', 'TELEHANDLER', 'LADDER_LIFT', 'FALL_PROTECTION', 'CART', 'LIFT', 'TRENCHER', 'BORE_RIG', 'LOCATOR',
    'ROCK_SAW', 'CABLE_PULLER', 'TORQUE_TOOLS', 'TEST_SET', 'TRACTOR']);
