package org.trammel.shop.orders;

import org.springframework.data.jpa.repository.JpaRepository;

interface RiderRepository extends JpaRepository<Rider, Long> {}
