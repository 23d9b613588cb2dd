package org.frisket.cli.settings;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.frisket.geometry.Length;
import org.frisket.material.tools.Machine;
import org.frisket.material.trials.Settings;

/** Settings as the verbs write them. */
final class SettingsText {

	private SettingsText() {
	}

	static String plain(double value) {
		BigDecimal rounded = new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}

	/** In a line; steps in the units of the machine. */
	static String line(Settings settings, Machine machine) {
		return "exposure " + Length.text(settings.exposure(), 2) + ", pressure " + plain(settings.pressure()) + ' '
				+ machine.pressure().unit() + ", speed " + plain(settings.speed()) + ' ' + machine.speed().unit()
				+ ", passes " + settings.passes();
	}
}
