-- V204__people_on_site_and_near_misses.sql  Who is on site on the day of a cutover, with role and times, and near misses (what
-- happened, what could have happened, what was done) beside what is wrong: entries of the log like all others, only ever added.
alter table day_log_entry drop constraint day_log_entry_kind_known;
alter table day_log_entry add constraint day_log_entry_kind_known check (kind in
    ('DONE', 'READING', 'STAYS', 'WRONG', 'PHOTO', 'REVERSAL_TIME', 'REVERSE', 'REVERSE_REASON', 'POWER_ON', 'SIGNED', 'CORRECTED',
     'TAKEN_BACK', 'ARRIVED', 'LEFT', 'NEAR_MISS', 'COULD_HAVE', 'WAS_DONE'));
alter table day_log_entry drop constraint day_log_entry_change_names_its_entry;
alter table day_log_entry add constraint day_log_entry_change_names_its_entry check
    ((kind in ('CORRECTED', 'TAKEN_BACK', 'STAYS', 'LEFT', 'COULD_HAVE', 'WAS_DONE')) = (corrects is not null));
