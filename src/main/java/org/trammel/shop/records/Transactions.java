package org.trammel.shop.records;

import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.transaction.autoconfigure.TransactionManagerCustomizers;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.transaction.PlatformTransactionManager;

/** The transactions of all services. */
@Configuration(proxyBeanMethods = false)
class Transactions {

    @Bean
    PlatformTransactionManager transactionManager(
            DataSource database, ObjectProvider<TransactionManagerCustomizers> customizers) throws SQLException {
        WritersInTurn transactions = new WritersInTurn(database);
        customizers.ifAvailable(each -> each.customize(transactions));
        return transactions;
    }
}
