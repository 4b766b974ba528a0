-- V011__signing_in.sql  What signing in needs to remember across nodes: tries, second factors, kept phones, links that are used once.
-- Secrets that a person carries (links, phones, recovery codes) are stored as hashes only.
alter table person
    add column second_factor_excused boolean     not null default false,
    add column second_factor_secret  bytea,
    add column second_factor_since   timestamptz,
    add column second_factor_step    bigint      not null default 0,
    add constraint person_second_factor_whole check ((second_factor_secret is null) = (second_factor_since is null));

-- Misses per address and per source, known to us or not: subject is a hash, so that a mistyped secret is kept nowhere.
create table sign_in_tries (
    subject      text        not null,
    misses       int         not null default 0,
    locks        int         not null default 0,
    locked_until timestamptz,
    last_at      timestamptz not null,
    constraint sign_in_tries_key primary key (subject)
);
create index sign_in_tries_by_time on sign_in_tries (last_at);

create table recovery_code (
    person_id uuid        not null,
    code_hash text        not null,
    used_at   timestamptz,
    constraint recovery_code_key primary key (person_id, code_hash),
    constraint recovery_code_person foreign key (person_id) references person
);

create table device (
    id         uuid        primary key,
    person_id  uuid        not null,
    token_hash text        not null,
    name       text        not null,
    created_at timestamptz not null,
    seen_at    timestamptz not null,
    ends_at    timestamptz not null,
    constraint device_person foreign key (person_id) references person,
    constraint device_token_once unique (token_hash),
    constraint device_lives_two_weeks_at_most check (ends_at <= created_at + interval '14 days')
);
create index device_of_person on device (person_id);

create table password_reset (
    id         uuid        primary key,
    person_id  uuid        not null,
    token_hash text        not null,
    created_at timestamptz not null,
    ends_at    timestamptz not null,
    used_at    timestamptz,
    constraint password_reset_person foreign key (person_id) references person,
    constraint password_reset_token_once unique (token_hash)
);
create index password_reset_of_person on password_reset (person_id);

create table invitation (
    id           uuid        primary key,
    branch_id    uuid        not null,
    email        text        not null,
    name         text        not null,
    roles        text[]      not null,
    token_hash   text        not null,
    invited_by   uuid        not null,
    created_at   timestamptz not null,
    ends_at      timestamptz not null,
    used_at      timestamptz,
    withdrawn_at timestamptz,
    constraint invitation_branch foreign key (branch_id) references branch,
    constraint invitation_invited_by foreign key (invited_by) references person,
    constraint invitation_token_once unique (token_hash),
    constraint invitation_email_lower check (email = lower(email)),
    constraint invitation_roles_known check (cardinality(roles) > 0
        and roles <@ array['MANAGER', 'PROJECT_MANAGER', 'DESIGNER', 'CREW_LEAD'])
);
create index invitation_of_branch on invitation (branch_id, created_at);
create index invitation_by_inviter on invitation (invited_by);
select plumbrow_wall('invitation');

-- Security events of the whole firm: read by its owner. Append-only for 24 months, then they may go.
create table security_event (
    id        uuid        primary key,
    at        timestamptz not null,
    kind      text        not null,
    person_id uuid,
    who       text        not null,
    sentence  text        not null,
    source    text        not null,
    constraint security_event_kind_form check (kind ~ '^[a-z]+(-[a-z]+)*$')
);
create index security_event_by_time on security_event (at desc, id desc);
create index security_event_of_person on security_event (person_id, at desc);

create function refuse_change_before_24_months() returns trigger
    language plpgsql as $$
begin
    if tg_op = 'DELETE' and old.at < now() - interval '24 months' then
        return old;
    end if;
    raise exception using
        errcode = 'integrity_constraint_violation',
        message = format('%s is append-only for 24 months: %s refused', tg_table_name, lower(tg_op));
end $$;
create trigger append_only before update or delete on security_event
    for each row execute function refuse_change_before_24_months();
create trigger never_truncated before truncate on security_event
    for each statement execute function refuse_change();
