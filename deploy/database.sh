#!/bin/sh
# Run once by the database's first start: a role that owns its own database and nothing else.
set -eu
psql -v ON_ERROR_STOP=1 -v password="$(cat /run/secrets/kerfwright_password)" <<'SQL'
CREATE ROLE kerfwright LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION PASSWORD :'password';
CREATE DATABASE kerfwright OWNER kerfwright;
REVOKE ALL ON DATABASE kerfwright FROM PUBLIC;
REVOKE CONNECT ON DATABASE postgres FROM PUBLIC;
SQL
