package org.frisket.ui.material.internal.trials;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.StockFamily;
import org.frisket.material.tools.Machine;
import org.frisket.material.trials.Parameter;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Sweep;

/** Settings and stock in words, with units. */
public final class SettingsWords {

	private SettingsWords() {
	}

	public static String of(Settings settings, Machine machine) {
		String values = NLS.bind(Messages.SettingsWords_settings,
				new Object[] { Sweep.plain(settings.pressure()), machine.pressure().unit(), Sweep.plain(settings.speed()),
						machine.speed().unit(), settings.passes() });
		return settings.exposure() == 0 ? values
				: NLS.bind(Messages.SettingsWords_exposure, Sweep.plain(settings.exposure()), values);
	}

	static String of(Parameter parameter) {
		return switch (parameter) {
		case EXPOSURE -> Messages.SettingsWords_parameterExposure;
		case PRESSURE -> Messages.SettingsWords_parameterPressure;
		case SPEED -> Messages.SettingsWords_parameterSpeed;
		case PASSES -> Messages.SettingsWords_parameterPasses;
		};
	}

	public static String of(StockFamily family) {
		return switch (family) {
		case CARD -> Messages.SettingsWords_card;
		case PAPER -> Messages.SettingsWords_paper;
		case LABEL -> Messages.SettingsWords_label;
		case FILM -> Messages.SettingsWords_film;
		case FABRIC -> Messages.SettingsWords_fabric;
		case BOARD -> Messages.SettingsWords_board;
		case FOAM -> Messages.SettingsWords_foam;
		case OTHER -> Messages.SettingsWords_other;
		};
	}

	/** @param name of the stock; empty for one that is not on the shelf */
	static String of(StockFacts stock, String name) {
		String what = name.isEmpty() ? of(stock.family()) : name;
		return stock.grammage() > 0 ? NLS.bind(Messages.SettingsWords_stock, what, Sweep.plain(stock.grammage())) : what;
	}
}
