/**
 */
package org.frisket.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Pen Style</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What of a wording is worked: the outlines of its letters, the middle of their strokes, or outlines and hatching.
 * <!-- end-model-doc -->
 * @see org.frisket.model.impl.FrisketPackageImpl#getPenStyle()
 * @generated
 */
public enum PenStyle implements InternalPenStyle {
	/**
	 * The '<em><b>Outline</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OUTLINE_VALUE
	 * @generated
	 * @ordered
	 */
	OUTLINE(0, "outline", "outline"),

	/**
	 * The '<em><b>Centreline</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CENTRELINE_VALUE
	 * @generated
	 * @ordered
	 */
	CENTRELINE(1, "centreline", "centreline"),

	/**
	 * The '<em><b>Hatched</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HATCHED_VALUE
	 * @generated
	 * @ordered
	 */
	HATCHED(2, "hatched", "hatched");

	/**
	 * The '<em><b>Outline</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OUTLINE
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE_VALUE = 0;

	/**
	 * The '<em><b>Centreline</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CENTRELINE
	 * @generated
	 * @ordered
	 */
	public static final int CENTRELINE_VALUE = 1;

	/**
	 * The '<em><b>Hatched</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HATCHED
	 * @generated
	 * @ordered
	 */
	public static final int HATCHED_VALUE = 2;

	/**
	 * An array of all the '<em><b>Pen Style</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PenStyle[] VALUES_ARRAY =
		new PenStyle[] {
			OUTLINE,
			CENTRELINE,
			HATCHED,
		};

	/**
	 * A public read-only list of all the '<em><b>Pen Style</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PenStyle> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Pen Style</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PenStyle get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PenStyle result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pen Style</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PenStyle getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			PenStyle result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pen Style</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PenStyle get(int value) {
		switch (value) {
			case OUTLINE_VALUE: return OUTLINE;
			case CENTRELINE_VALUE: return CENTRELINE;
			case HATCHED_VALUE: return HATCHED;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private PenStyle(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //PenStyle

/**
 * A private implementation interface used to hide the inheritance from Enumerator.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
interface InternalPenStyle extends org.eclipse.emf.common.util.Enumerator {
	// Empty 
}
