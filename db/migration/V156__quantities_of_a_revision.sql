-- What a frozen revision holds, counted once: durations are made from it for a whole branch at a time, and need not read
-- the drawings of every project for that.
alter table design_revision add column quantities jsonb not null default '{"revision": "", "arrays": [], "inverters": 0, "kwAc": 0}';
alter table design_revision alter column quantities drop default;
