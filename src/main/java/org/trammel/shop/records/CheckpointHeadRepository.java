package org.trammel.shop.records;

import org.springframework.data.jpa.repository.JpaRepository;

interface CheckpointHeadRepository extends JpaRepository<CheckpointHead, Long> {}
