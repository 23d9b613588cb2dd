package org.frisket.studio.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

/** How many connections a desk has open, with connections that lead nowhere. */
class ServerConnectionsTest {

	private static final long SECOND = 1_000_000_000L;

	private final List<Connection> open = new ArrayList<>();
	private long now = 7;
	private boolean answers = true;
	private boolean refuses;
	private final ServerConnections connections = new ServerConnections(this::connect, () -> now);

	private Connection connect() {
		Connection[] made = { null };
		made[0] = (Connection) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] { Connection.class },
				(self, method, arguments) -> switch (method.getName()) {
				case "close" -> {
					open.remove(made[0]);
					yield null;
				}
				case "isValid" -> answers;
				case "setTransactionIsolation" -> {
					if (refuses) {
						throw new SQLException("no such isolation");
					}
					yield null;
				}
				case "equals" -> self == arguments[0];
				case "hashCode" -> System.identityHashCode(self);
				default -> null;
				});
		open.add(made[0]);
		return made[0];
	}

	private void burst(int many) throws SQLException {
		List<Connection> taken = new ArrayList<>();
		for (int i = 0; i < many; i++) {
			taken.add(connections.take());
		}
		assertEquals(many, open.size());
		taken.forEach(each -> connections.give(each, true));
	}

	@Test
	void oneAfterTheOtherNeedsOne() throws Exception {
		Connection first = connections.take();
		connections.give(first, true);
		for (int i = 0; i < 5; i++) {
			now += SECOND / 2;
			Connection next = connections.take();
			assertSame(first, next);
			connections.give(next, true);
		}
		assertEquals(List.of(first), open);
	}

	@Test
	void fewStayOpenAndAfterAWhileOnlyThoseThatAreNeeded() throws Exception {
		burst(6);
		assertEquals(3, open.size());
		for (int i = 0; i < 40; i++) {
			now += SECOND;
			connections.give(connections.take(), true);
		}
		assertEquals(1, open.size());
		connections.end();
		assertEquals(List.of(), open);
	}

	@Test
	void oneThatIsNotSoundOrDoesNotAnswerIsNotUsedAgain() throws Exception {
		Connection lost = connections.take();
		connections.give(lost, false);
		assertEquals(List.of(), open);
		Connection silent = connections.take();
		connections.give(silent, true);
		now += 2 * SECOND;
		answers = false;
		assertNotSame(silent, connections.take());
		assertEquals(1, open.size());
	}

	@Test
	void oneThatCannotBeUsedIsNotLeftOpen() {
		refuses = true;
		assertThrows(SQLException.class, connections::connect);
		assertEquals(List.of(), open);
	}
}
