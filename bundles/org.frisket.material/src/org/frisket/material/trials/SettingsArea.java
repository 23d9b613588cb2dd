package org.frisket.material.trials;

import org.frisket.studio.store.Area;

/** Where {@link JdbcSettingsStore} keeps its tables in a studio's store. */
public final class SettingsArea {

	public static final Area AREA = new Area("settings", SettingsArea.class, "migrations");

	private SettingsArea() {
	}
}
