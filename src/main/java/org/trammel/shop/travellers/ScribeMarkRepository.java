package org.trammel.shop.travellers;

import org.springframework.data.jpa.repository.JpaRepository;

interface ScribeMarkRepository extends JpaRepository<ScribeMarkRow, String> {}
