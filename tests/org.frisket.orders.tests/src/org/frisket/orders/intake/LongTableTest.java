package org.frisket.orders.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.sql.Connection;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

import org.frisket.geometry.Monitor;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.internal.ManyOrders;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a long table of orders costs, and that it can be called off. */
class LongTableTest extends BothDatabases {

	private static final int ROWS = 4000;
	private static final int CUSTOMERS = 700;
	/** Measured: 4 to 5 kB, as often as H2 writes in between; one by one it was more than 12 kB. */
	private static final long BYTES_A_ROW = 10_000;

	private static OrderReading table(OrderIntake intake, int rows) throws Exception {
		StringBuilder text = new StringBuilder("Title,Customer,Due,Quantity,Notes,Ref\n");
		for (int i = 1; i <= rows; i++) {
			text.append("Place cards ").append(i).append(",Guest ").append(i % CUSTOMERS).append(",2027-03-01,").append(i)
					.append(",on \"\"laid\"\" paper,R-").append(i).append('\n');
		}
		return intake.read(text.toString().replace("\"\"", "").getBytes(StandardCharsets.UTF_8), OrderMapping.GUESSED, false);
	}

	/** Told of every statement that is made. */
	private static Connection counted(Connection connection, AtomicInteger statements) {
		return (Connection) Proxy.newProxyInstance(LongTableTest.class.getClassLoader(), new Class<?>[] { Connection.class },
				(proxy, method, arguments) -> {
					if (method.getName().equals("prepareStatement")) {
						statements.incrementAndGet();
					}
					try {
						return method.invoke(connection, arguments);
					} catch (InvocationTargetException e) {
						throw e.getCause();
					}
				});
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void statementsAreForPortionsAndNotForRows(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		List<ManyOrders.Wanted> wanted = table(new OrderIntake(studio), ROWS).rows().stream()
				.map(row -> new ManyOrders.Wanted(row.order(), row.reference())).toList();
		AtomicInteger statements = new AtomicInteger();
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.<List<Entry>, Exception>change(connection -> {
				statements.set(0);
				return ManyOrders.takeIn(counted(connection, statements), wanted, Instant.EPOCH, "Ottoline", Monitor.NONE);
			});
		}
		// three for 500 rows, two for the numbers, three for 700 customers
		assertTrue(statements.get() > 0 && statements.get() <= ROWS / 100, statements + " statements");
		OrderBook book = new OrderBook(studio);
		List<Entry> jobs = book.list(ROWS + 1);
		assertEquals(IntStream.iterate(ROWS, i -> i > 0, i -> i - 1).mapToObj(i -> "Place cards " + i).toList(),
				jobs.stream().map(Entry::title).toList());
		assertEquals(ROWS, jobs.get(0).number());
		assertEquals("R-" + ROWS, book.reference(ROWS).orElseThrow());
		assertEquals("on laid paper", book.open(ROWS / 2).job().getNotes());
		assertEquals("Guest 1", book.find(CUSTOMERS + 1L).customer());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsCalledOffLeavesNothingAndWhatIsTakenInIsNoLargerThanItMustBe(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		OrderIntake intake = new OrderIntake(studio);
		OrderReading table = table(intake, ROWS);
		List<Double> told = new ArrayList<>();
		assertThrows(CancellationException.class, () -> intake.takeIn(table, "Ottoline", new Monitor() {

			@Override
			public boolean isCancelled() {
				return told.size() == 3;
			}

			@Override
			public void worked(double fraction) {
				told.add(fraction);
			}
		}));
		assertEquals(List.of(0.125, 0.25, 0.375), told);
		assertEquals(List.of(), new OrderBook(studio).list(1));
		List<Entry> taken = intake.takeIn(table, "Ottoline");
		assertEquals(1, taken.get(0).number());
		assertEquals(ROWS, new OrderBook(studio).list(ROWS + 1).size());
		if (!shared) {
			long size = Files.size(Store.file(studio));
			assertTrue(size < ROWS * BYTES_A_ROW, size + " bytes");
		}
	}
}
