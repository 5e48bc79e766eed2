package org.trammel.shop.orders;

import java.util.List;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;

interface CustomerRepository extends JpaRepository<Customer, Long> {

    List<Customer> findByErasedAtIsNullOrderByIdDesc(Limit limit);
}
