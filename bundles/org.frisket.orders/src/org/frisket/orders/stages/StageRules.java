package org.frisket.orders.stages;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.OrderException;
import org.frisket.orders.StageGate;
import org.frisket.studio.StudioFolder;

/** The rules of a studio: all that there are, on or off, as its preferences say and so for all its desks. */
public final class StageRules {

	private static final String PREFERENCE = "orders.rule.";
	private static final String OFF = "off";
	private static final String ON = "on";

	private final StudioFolder studio;

	public StageRules(StudioFolder studio) {
		this.studio = studio;
	}

	/** In the order in which they are asked. */
	public static List<StageRule> all() {
		return List.of(UsualRule.values());
	}

	/**
	 * Whether a rule holds here; as long as nobody has decided, as is usual.
	 *
	 * @throws IOException if the studio's preferences cannot be read
	 */
	public boolean isOn(StageRule rule) throws IOException {
		return studio.preferences().get(PREFERENCE + rule.id()).map(String::strip).map(text -> !text.equalsIgnoreCase(OFF))
				.orElseGet(rule::isUsual);
	}

	/**
	 * Turns a rule on or off.
	 *
	 * @throws OrderException if there is no such rule
	 * @throws IOException    if the studio's preferences cannot be written
	 */
	public void set(String id, boolean on) throws IOException, OrderException {
		StageRule rule = all().stream().filter(each -> each.id().equals(id)).findFirst()
				.orElseThrow(() -> new OrderException(NLS.bind(Messages.StageRules_none, id,
						all().stream().map(StageRule::id).collect(Collectors.joining(", ")))));
		studio.openForWriting();
		studio.preferences().put(PREFERENCE + rule.id(), on ? ON : OFF);
	}

	/**
	 * Lets a job pass that no rule that is on objects to.
	 *
	 * @param blocking asked only if a rule wants to know: the blocking findings of the job as it is kept
	 */
	public StageGate gate(Supplier<List<String>> blocking) {
		return step -> {
			for (StageRule rule : all()) {
				if (isOn(rule)) {
					Optional<String> objection = rule.objection(step, blocking);
					if (objection.isPresent()) {
						throw new StageRuleException(step.entry().number(), rule, objection.get());
					}
				}
			}
		};
	}
}
