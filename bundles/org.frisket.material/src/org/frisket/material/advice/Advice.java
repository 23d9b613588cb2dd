package org.frisket.material.advice;

import java.util.List;

import org.frisket.material.trials.Settings;

/**
 * What to begin with, how sure that is, and why.
 *
 * @param settings   in the steps of the machine
 * @param window     the pressures that go well; null without comparable trials
 * @param trials     how many stand behind it
 * @param outside    whether the stock lies outside of what was tried
 * @param reasons    sentences in the user's language, the weightiest first
 * @param cautions   what to mind, the gravest first
 */
public record Advice(Settings settings, Confidence confidence, PressureWindow window, int trials, boolean outside,
		List<String> reasons, List<Caution> cautions) {

	/**
	 * Pressures that go well, in the steps of the machine.
	 *
	 * @param from      the least that comes through
	 * @param fromLeast below it, every pressure is ruled out as too low; minus infinity if the trials say nothing
	 * @param fromMost  above it, every pressure is sure to come through; infinity if the trials say nothing
	 * @param to        the greatest that spares the carrier; below {@code from} if no pressure does both
	 * @param toLeast   below it, every pressure is sure to spare the carrier; minus infinity if the trials say nothing
	 * @param toMost    above it, every pressure is sure to cut the carrier; infinity if the trials say nothing
	 */
	public record PressureWindow(double from, double fromLeast, double fromMost, double to, double toLeast,
			double toMost) {

		public boolean isOpen() {
			return from <= to;
		}
	}

	public Advice {
		reasons = List.copyOf(reasons);
		cautions = List.copyOf(cautions);
	}
}
