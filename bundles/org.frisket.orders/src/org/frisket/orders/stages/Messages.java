package org.frisket.orders.stages;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StageRuleException;
	public static String StageRules_none;
	public static String UsualRule_back;
	public static String UsualRule_backDoes;
	public static String UsualRule_blocking;
	public static String UsualRule_findings;
	public static String UsualRule_findingsDoes;
	public static String UsualRule_noProof;
	public static String UsualRule_noRemark;
	public static String UsualRule_proof;
	public static String UsualRule_proofDoes;

	static {
		initializeMessages("org.frisket.orders.stages.messages", Messages.class);
	}

	private Messages() {
	}
}
