package org.frisket.orders.stages;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.OrderException;

/** A rule of the studio is against a step of a job. */
public final class StageRuleException extends OrderException {

	private static final long serialVersionUID = 1L;

	private final String rule;
	private final String reason;

	StageRuleException(long number, StageRule rule, String reason) {
		super(NLS.bind(Messages.StageRuleException, new Object[] { number, reason, rule.title(), rule.id() }));
		this.rule = rule.id();
		this.reason = reason;
	}

	/** The id of the rule. */
	public String rule() {
		return rule;
	}

	/** What is against it, without the rule and how to turn it off. */
	public String reason() {
		return reason;
	}
}
