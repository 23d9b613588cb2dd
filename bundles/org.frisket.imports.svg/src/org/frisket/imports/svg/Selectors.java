package org.frisket.imports.svg;

import java.util.StringTokenizer;

import org.w3c.css.sac.AttributeCondition;
import org.w3c.css.sac.CombinatorCondition;
import org.w3c.css.sac.Condition;
import org.w3c.css.sac.ConditionalSelector;
import org.w3c.css.sac.DescendantSelector;
import org.w3c.css.sac.ElementSelector;
import org.w3c.css.sac.Selector;

/**
 * Selectors of types, classes, ids and attributes, of descendants and children: CSS 2.1, chapter 5. Those of states and
 * places among others are not known.
 */
final class Selectors {

	/** What an id, a class or attribute, and a type weigh. */
	private static final int ID = 1_000_000;
	private static final int CLASS = 1_000;

	/** The key of selectors that any element may match. */
	static final String ANY = "*";

	private Selectors() {
	}

	/** What elements have to have that match a known selector: a name, or one of the keys below. */
	static String key(Selector selector) {
		return switch (selector.getSelectorType()) {
		case Selector.SAC_ELEMENT_NODE_SELECTOR -> {
			String name = ((ElementSelector) selector).getLocalName();
			yield name == null ? ANY : name;
		}
		case Selector.SAC_CONDITIONAL_SELECTOR -> {
			ConditionalSelector conditional = (ConditionalSelector) selector;
			String key = key(conditional.getCondition());
			yield key.equals(ANY) ? key(conditional.getSimpleSelector()) : key;
		}
		case Selector.SAC_DESCENDANT_SELECTOR, Selector.SAC_CHILD_SELECTOR ->
			key(((DescendantSelector) selector).getSimpleSelector());
		default -> ANY;
		};
	}

	private static String key(Condition condition) {
		if (condition instanceof CombinatorCondition both) {
			String first = key(both.getFirstCondition());
			return first.equals(ANY) ? key(both.getSecondCondition()) : first;
		}
		return switch (condition.getConditionType()) {
		case Condition.SAC_ID_CONDITION -> ofId(((AttributeCondition) condition).getValue());
		case Condition.SAC_CLASS_CONDITION -> ofClass(((AttributeCondition) condition).getValue());
		default -> ANY;
		};
	}

	static String ofId(String id) {
		return "#" + id;
	}

	static String ofClass(String name) {
		return "." + name;
	}

	static boolean isKnown(Selector selector) {
		return switch (selector.getSelectorType()) {
		case Selector.SAC_ELEMENT_NODE_SELECTOR, Selector.SAC_ANY_NODE_SELECTOR -> true;
		case Selector.SAC_CONDITIONAL_SELECTOR -> {
			ConditionalSelector conditional = (ConditionalSelector) selector;
			yield isKnown(conditional.getSimpleSelector()) && isKnown(conditional.getCondition());
		}
		case Selector.SAC_DESCENDANT_SELECTOR, Selector.SAC_CHILD_SELECTOR -> {
			DescendantSelector descendant = (DescendantSelector) selector;
			yield isKnown(descendant.getAncestorSelector()) && isKnown(descendant.getSimpleSelector());
		}
		default -> false;
		};
	}

	private static boolean isKnown(Condition condition) {
		return switch (condition.getConditionType()) {
		case Condition.SAC_AND_CONDITION -> isKnown(((CombinatorCondition) condition).getFirstCondition())
				&& isKnown(((CombinatorCondition) condition).getSecondCondition());
		case Condition.SAC_ID_CONDITION, Condition.SAC_CLASS_CONDITION, Condition.SAC_ATTRIBUTE_CONDITION,
				Condition.SAC_ONE_OF_ATTRIBUTE_CONDITION, Condition.SAC_BEGIN_HYPHEN_ATTRIBUTE_CONDITION ->
			true;
		default -> false;
		};
	}

	/** CSS 2.1, section 6.4.3. */
	static int specificity(Selector selector) {
		return switch (selector.getSelectorType()) {
		case Selector.SAC_ELEMENT_NODE_SELECTOR -> ((ElementSelector) selector).getLocalName() == null ? 0 : 1;
		case Selector.SAC_CONDITIONAL_SELECTOR -> {
			ConditionalSelector conditional = (ConditionalSelector) selector;
			yield specificity(conditional.getSimpleSelector()) + specificity(conditional.getCondition());
		}
		case Selector.SAC_DESCENDANT_SELECTOR, Selector.SAC_CHILD_SELECTOR -> {
			DescendantSelector descendant = (DescendantSelector) selector;
			yield specificity(descendant.getAncestorSelector()) + specificity(descendant.getSimpleSelector());
		}
		default -> 0;
		};
	}

	private static int specificity(Condition condition) {
		return switch (condition.getConditionType()) {
		case Condition.SAC_AND_CONDITION -> specificity(((CombinatorCondition) condition).getFirstCondition())
				+ specificity(((CombinatorCondition) condition).getSecondCondition());
		case Condition.SAC_ID_CONDITION -> ID;
		default -> CLASS;
		};
	}

	/** @param selector a known one */
	static boolean matches(Selector selector, Node node) {
		if (node == null) {
			return false;
		}
		switch (selector.getSelectorType()) {
		case Selector.SAC_ELEMENT_NODE_SELECTOR:
			String name = ((ElementSelector) selector).getLocalName();
			return name == null || node.is(name);
		case Selector.SAC_CONDITIONAL_SELECTOR:
			ConditionalSelector conditional = (ConditionalSelector) selector;
			return matches(conditional.getSimpleSelector(), node) && matches(conditional.getCondition(), node);
		case Selector.SAC_CHILD_SELECTOR:
			DescendantSelector child = (DescendantSelector) selector;
			return matches(child.getSimpleSelector(), node) && matches(child.getAncestorSelector(), node.parent());
		case Selector.SAC_DESCENDANT_SELECTOR:
			return matches(((DescendantSelector) selector).getSimpleSelector(), node)
					&& matchesAncestor(((DescendantSelector) selector).getAncestorSelector(), node.parent());
		default:
			return true;
		}
	}

	private static boolean matchesAncestor(Selector selector, Node parent) {
		for (Node ancestor = parent; ancestor != null; ancestor = ancestor.parent()) {
			if (matches(selector, ancestor)) {
				return true;
			}
		}
		return false;
	}

	private static boolean matches(Condition condition, Node node) {
		if (condition instanceof CombinatorCondition both) {
			return matches(both.getFirstCondition(), node) && matches(both.getSecondCondition(), node);
		}
		AttributeCondition attribute = (AttributeCondition) condition;
		String wanted = attribute.getValue();
		return switch (condition.getConditionType()) {
		case Condition.SAC_ID_CONDITION -> wanted.equals(node.attribute("id"));
		case Condition.SAC_CLASS_CONDITION -> isOneOf(wanted, node.attribute("class"));
		case Condition.SAC_ONE_OF_ATTRIBUTE_CONDITION -> isOneOf(wanted, node.attribute(attribute.getLocalName()));
		case Condition.SAC_BEGIN_HYPHEN_ATTRIBUTE_CONDITION ->
			(node.attribute(attribute.getLocalName(), "") + "-").startsWith(wanted + "-");
		default -> {
			String value = node.attribute(attribute.getLocalName());
			yield value != null && (wanted == null || wanted.equals(value));
		}
		};
	}

	private static boolean isOneOf(String word, String words) {
		if (words == null) {
			return false;
		}
		StringTokenizer each = new StringTokenizer(words);
		while (each.hasMoreTokens()) {
			if (each.nextToken().equals(word)) {
				return true;
			}
		}
		return false;
	}
}
