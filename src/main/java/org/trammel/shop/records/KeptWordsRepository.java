package org.trammel.shop.records;

import org.springframework.data.jpa.repository.JpaRepository;

interface KeptWordsRepository extends JpaRepository<KeptWordsRow, Long> {}
