package org.trammel.shop.travellers;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface ShopCallRepository extends JpaRepository<ShopCall, Long> {

    @Query("select c from ShopCall c where c.answeredAt is null order by c.at, c.id")
    List<ShopCall> open();
}
