-- V013__tries_within_a_time.sql  Misses count within a time only: an office behind one line misses some passwords every day.
alter table sign_in_tries add column began_at timestamptz;
update sign_in_tries set began_at = last_at;
alter table sign_in_tries alter column began_at set not null;
