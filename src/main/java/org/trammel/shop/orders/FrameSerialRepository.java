package org.trammel.shop.orders;

import org.springframework.data.jpa.repository.JpaRepository;

interface FrameSerialRepository extends JpaRepository<FrameSerial, String> {}
