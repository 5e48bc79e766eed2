-- Why a hole saw was taken out of use; nothing of those that were retired before it was asked.
alter table hole_saw add column retired_because varchar(400);
