package org.frisket.orders.paper.quote;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.run.Rate;
import org.frisket.studio.StudioFolder;

/**
 * How a studio makes its quotes, in its preferences and so for all its desks: an entry for each of {@link QuoteOptions},
 * and the rate of its machines. What is said for one quote goes before.
 */
public final class StudioQuote {

	private static final String START = "quote.";

	private final StudioFolder studio;

	public StudioQuote(StudioFolder studio) {
		this.studio = studio;
	}

	/** All that is kept: the machine's rate, then the options of a quote. */
	public static List<Option> options() {
		List<Option> all = new ArrayList<>(List.of(QuoteOptions.RATE));
		all.addAll(QuoteOptions.options());
		return all;
	}

	/** The preference that holds an option. */
	static String key(Option option) {
		return option.equals(QuoteOptions.RATE) ? Rate.KEY : START + option.name();
	}

	/**
	 * What is kept of {@link #options()} as texts by name, right or wrong; defaults where nothing is kept.
	 *
	 * @throws IOException if the studio's preferences cannot be read
	 */
	public Map<String, String> texts() throws IOException {
		Map<String, String> texts = new LinkedHashMap<>();
		for (Option option : options()) {
			texts.put(option.name(), studio.preferences().get(key(option)).filter(text -> !text.isBlank()).map(String::strip)
					.orElse(option.initial()));
		}
		return texts;
	}

	/**
	 * The rules of one quote.
	 *
	 * @param said for this quote by the names of {@link QuoteOptions#options()}; the studio's for the rest
	 * @throws IOException              if the studio's preferences cannot be read
	 * @throws IllegalArgumentException if what is said or kept is wrong, with the reason in the user's language
	 */
	public QuoteRules rules(Map<String, String> said) throws IOException {
		Map<String, String> texts = new LinkedHashMap<>(said);
		Map<String, String> kept = texts();
		for (Option option : QuoteOptions.options()) {
			if (!said.containsKey(option.name())) {
				texts.put(option.name(), checked(option, kept.get(option.name())));
			}
		}
		return QuoteOptions.rules(OptionValues.of(QuoteOptions.options(), texts));
	}

	/** What is wrong with a kept text is said with the place where it is kept. */
	private String checked(Option option, String text) {
		try {
			QuoteOptions.rules(OptionValues.of(QuoteOptions.options(), Map.of(option.name(), text)));
			return text;
		} catch (IllegalArgumentException e) {
			throw new IllegalArgumentException(
					NLS.bind(Messages.StudioQuote_wrong, new Object[] { key(option), studio.path(), e.getMessage() }), e);
		}
	}

	/**
	 * The rate that a text of {@link #options()} stands for; empty for none.
	 *
	 * @throws IllegalArgumentException with the reason in the user's language
	 */
	public static Optional<Rate> rate(Map<String, String> texts) {
		return Optional.of(texts.getOrDefault(QuoteOptions.RATE.name(), "")).filter(text -> !text.isBlank()).map(Rate::parse);
	}

	/**
	 * The rules that texts of {@link #options()} stand for; defaults for those that are missing.
	 *
	 * @throws IllegalArgumentException if one of them is wrong, with the reason in the user's language
	 */
	public static QuoteRules check(Map<String, String> texts) {
		rate(texts);
		Map<String, String> ofQuote = new LinkedHashMap<>(texts);
		ofQuote.remove(QuoteOptions.RATE.name());
		return QuoteOptions.rules(OptionValues.of(QuoteOptions.options(), ofQuote));
	}

	/**
	 * Keeps texts for all desks, all or none.
	 *
	 * @throws IllegalArgumentException as {@link #check} does; nothing is kept then
	 * @throws IOException              if the studio's preferences cannot be written
	 */
	public void keep(Map<String, String> texts) throws IOException {
		check(texts);
		Map<String, String> kept = new LinkedHashMap<>();
		for (Option option : options()) {
			if (texts.containsKey(option.name())) {
				kept.put(key(option), texts.get(option.name()).strip());
			}
		}
		studio.openForWriting();
		studio.preferences().putAll(kept);
	}
}
