package org.frisket.orders.work;

import org.frisket.studio.store.Area;

/** Where a studio's store keeps what was planned to be run, and what became of it. */
public final class RunArea {

	/** To be named when the store is opened, with that of the order book. */
	public static final Area AREA = new Area("work", RunArea.class, "migrations");

	private RunArea() {
	}
}
