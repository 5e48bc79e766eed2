package org.trammel.shop.records;

import org.springframework.data.jpa.repository.JpaRepository;

interface ErasureRepository extends JpaRepository<Erasure, String> {}
