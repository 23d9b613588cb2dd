/**
 */
package org.frisket.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Sheet Fit</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a sheet may have done between its design and its measure: moved and turned, scaled as well, skewed as well, seen from aslant as well.
 * <!-- end-model-doc -->
 * @see org.frisket.model.impl.FrisketPackageImpl#getSheetFit()
 * @generated
 */
public enum SheetFit implements InternalSheetFit {
	/**
	 * The '<em><b>Rigid</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RIGID_VALUE
	 * @generated
	 * @ordered
	 */
	RIGID(0, "rigid", "rigid"),

	/**
	 * The '<em><b>Similarity</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SIMILARITY_VALUE
	 * @generated
	 * @ordered
	 */
	SIMILARITY(1, "similarity", "similarity"),

	/**
	 * The '<em><b>Affine</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AFFINE_VALUE
	 * @generated
	 * @ordered
	 */
	AFFINE(2, "affine", "affine"),

	/**
	 * The '<em><b>Projective</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PROJECTIVE_VALUE
	 * @generated
	 * @ordered
	 */
	PROJECTIVE(3, "projective", "projective");

	/**
	 * The '<em><b>Rigid</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #RIGID
	 * @generated
	 * @ordered
	 */
	public static final int RIGID_VALUE = 0;

	/**
	 * The '<em><b>Similarity</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SIMILARITY
	 * @generated
	 * @ordered
	 */
	public static final int SIMILARITY_VALUE = 1;

	/**
	 * The '<em><b>Affine</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #AFFINE
	 * @generated
	 * @ordered
	 */
	public static final int AFFINE_VALUE = 2;

	/**
	 * The '<em><b>Projective</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #PROJECTIVE
	 * @generated
	 * @ordered
	 */
	public static final int PROJECTIVE_VALUE = 3;

	/**
	 * An array of all the '<em><b>Sheet Fit</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SheetFit[] VALUES_ARRAY =
		new SheetFit[] {
			RIGID,
			SIMILARITY,
			AFFINE,
			PROJECTIVE,
		};

	/**
	 * A public read-only list of all the '<em><b>Sheet Fit</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SheetFit> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Sheet Fit</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SheetFit get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SheetFit result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sheet Fit</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SheetFit getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SheetFit result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sheet Fit</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SheetFit get(int value) {
		switch (value) {
			case RIGID_VALUE: return RIGID;
			case SIMILARITY_VALUE: return SIMILARITY;
			case AFFINE_VALUE: return AFFINE;
			case PROJECTIVE_VALUE: return PROJECTIVE;
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
	private SheetFit(int value, String name, String literal) {
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
	
} //SheetFit

/**
 * A private implementation interface used to hide the inheritance from Enumerator.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
interface InternalSheetFit extends org.eclipse.emf.common.util.Enumerator {
	// Empty 
}
