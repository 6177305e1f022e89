#!/bin/sh
# Run once by the database's first start: a role that owns the practice's tables and is for set-up and upgrade alone, and one
# that works with them and owns nothing. "kerfwright upgrade --role kerfwright" gives the second what it needs.
set -eu
psql -v ON_ERROR_STOP=1 -v password="$(cat /run/secrets/kerfwright_password)" -v owner="$(cat /run/secrets/owner_password)" <<'SQL'
CREATE ROLE kerfwright_owner LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION PASSWORD :'owner';
CREATE ROLE kerfwright LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION PASSWORD :'password';
CREATE DATABASE kerfwright OWNER kerfwright_owner;
REVOKE ALL ON DATABASE kerfwright FROM PUBLIC;
GRANT CONNECT ON DATABASE kerfwright TO kerfwright;
REVOKE CONNECT ON DATABASE postgres FROM PUBLIC;
SQL
