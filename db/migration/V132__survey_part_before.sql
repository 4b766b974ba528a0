-- V132__survey_part_before.sql  What stood in a part before its last change, so that the change can be taken back.
alter table survey_part
    add column before jsonb not null default '{}',
    add constraint survey_part_before_is_a_record check (jsonb_typeof(before) = 'object');

select set_config('plumbrow.scope', 'all', true);
update survey_part set before = readings;
