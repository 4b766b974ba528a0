-- V253__qualified_people_of_a_crew.sql  How many people of a crew are qualified for electrical work. A cutover needs two, and a
-- crew's size says nothing of it. Of crews that were there before nobody has said: unknown, except that a crew without
-- an electrician has nobody who may lead such work and is never asked.
alter table crew add column electrical_people int;
alter table crew add constraint crew_electrical_people check (electrical_people between 0 and size);
