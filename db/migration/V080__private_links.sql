-- V080__private_links.sql  Pages that open without an account: crew feeds, the customer's page, the shut-off label.
-- The link itself stands in no row: it is made from the row's id and version with a key, and only its hash is kept to find it.
create table private_link_key (
    only_one boolean not null default true,
    secret   bytea   not null,
    constraint private_link_key_is_the_only_one primary key (only_one),
    constraint private_link_key_only_one_is_true check (only_one),
    constraint private_link_key_long_enough check (length(secret) >= 32)
);

create table private_link (
    id                uuid primary key,
    branch_id         uuid        not null,
    kind              text        not null,
    subject_id        uuid        not null,
    version           bigint      not null,
    token_hash        bytea       not null,
    made_at           timestamptz not null,
    made_by           text        not null,
    valid_until       timestamptz not null,
    ended_at          timestamptz,
    last_visit_at     timestamptz,
    visit_minute      bigint      not null default 0,
    visits_in_minute  int         not null default 0,
    constraint private_link_branch foreign key (branch_id) references branch,
    constraint private_link_kind_known check (kind in ('CREW_FEED', 'CUSTOMER', 'SHUT_OFF')),
    constraint private_link_one_per_subject unique (kind, subject_id),
    constraint private_link_token_is_unique unique (token_hash)
);
create index private_link_of_branch on private_link (branch_id);
select plumbrow_wall('private_link');

-- Guesses per source, counted here so that the limit holds across nodes.
create table private_link_miss (
    source      text   not null,
    ten_minutes bigint not null,
    misses      int    not null,
    constraint private_link_miss_key primary key (source, ten_minutes)
);
create index private_link_miss_by_time on private_link_miss (ten_minutes);
