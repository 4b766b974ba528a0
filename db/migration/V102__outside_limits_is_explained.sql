-- V102__outside_limits_is_explained.sql  A reading outside its limits stays only with the reason why.
alter table day_log_entry drop constraint day_log_entry_change_has_reason;
alter table day_log_entry add constraint day_log_entry_change_has_reason
    check (kind not in ('CORRECTED', 'TAKEN_BACK', 'STAYS') or coalesce(length(trim(reason)), 0) > 0);
