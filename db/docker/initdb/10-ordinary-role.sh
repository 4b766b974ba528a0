#!/bin/bash
# Runs once, when the volume is empty. The image's own user is a superuser, and a superuser walks through the wall
# between branches; so Plumbrow gets an ordinary role that owns its database and nothing else.
set -euo pipefail
psql -v ON_ERROR_STOP=1 -v secret="$(cat "$PLUMBROW_PASSWORD_FILE")" --username "$POSTGRES_USER" --dbname postgres <<'SQL'
create role plumbrow login nosuperuser nobypassrls nocreatedb nocreaterole password :'secret';
create database plumbrow owner plumbrow;
SQL
