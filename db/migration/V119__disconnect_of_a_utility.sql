-- How far from its meter a utility lets its disconnect stand without a letter. Ten feet is what most ask for.
alter table utility
    add column disconnect_most_ft int not null default 10,
    add constraint utility_disconnect check (disconnect_most_ft between 1 and 500);
