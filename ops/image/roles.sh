#!/bin/sh
# Run by the database's image when its volume is new.
psql -q -U postgres -v owner_password="$OWNER_PASSWORD" -v application_password="$APPLICATION_PASSWORD" \
  -f /etc/postgres-roles.sql postgres
