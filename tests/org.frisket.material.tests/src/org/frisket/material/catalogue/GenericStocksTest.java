package org.frisket.material.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

import org.frisket.material.Stock;
import org.junit.jupiter.api.Test;

class GenericStocksTest {

	@Test
	void allCanBeTakenOverTogether() {
		List<Stock> stocks = new GenericStocks().stocks();
		assertEquals(stocks.size(), stocks.stream().map(Stock::id).collect(Collectors.toSet()).size());
		assertEquals(stocks.size(), stocks.stream().map(Stock::name).collect(Collectors.toSet()).size());
		assertTrue(stocks.stream().allMatch(stock -> stock.onHand().equals(BigDecimal.ZERO)));
		assertTrue(stocks.stream().allMatch(stock -> stock.caliper().isPresent()), "each has limits");
		assertEquals(stocks, new GenericStocks().stocks());
	}
}
