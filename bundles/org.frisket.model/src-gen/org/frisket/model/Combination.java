/**
 */
package org.frisket.model;

import java.util.List;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Combination</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A shape that is made of others, which stay where they are, can be changed, and are not worked by themselves. It holds no geometry of its own.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Combination#getRule <em>Rule</em>}</li>
 *   <li>{@link org.frisket.model.Combination#getParts <em>Parts</em>}</li>
 *   <li>{@link org.frisket.model.Combination#getCornerRadius <em>Corner Radius</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Combination extends Element {
	/**
	 * Returns the value of the '<em><b>Rule</b></em>' attribute.
	 * The default value is <code>"unite"</code>.
	 * The literals are from the enumeration {@link org.frisket.model.CombinationRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it is made of them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rule</em>' attribute.
	 * @see org.frisket.model.CombinationRule
	 * @see #setRule(CombinationRule)
	 * @generated
	 */
	CombinationRule getRule();

	/**
	 * Sets the value of the '{@link org.frisket.model.Combination#getRule <em>Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rule</em>' attribute.
	 * @see org.frisket.model.CombinationRule
	 * @see #getRule()
	 * @generated
	 */
	void setRule(CombinationRule value);

	/**
	 * Returns the value of the '<em><b>Parts</b></em>' reference list.
	 * The list contents are of type {@link org.frisket.model.Element}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The elements it is made of; their order matters for all rules but unite, intersect and exclude.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parts</em>' reference list.
	 * @generated
	 */
	List<Element> getParts();

	/**
	 * Returns the value of the '<em><b>Corner Radius</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Radius in mm that its corners are rounded with; 0 leaves them as they are.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Corner Radius</em>' attribute.
	 * @see #setCornerRadius(double)
	 * @generated
	 */
	double getCornerRadius();

	/**
	 * Sets the value of the '{@link org.frisket.model.Combination#getCornerRadius <em>Corner Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Corner Radius</em>' attribute.
	 * @see #getCornerRadius()
	 * @generated
	 */
	void setCornerRadius(double value);

} // Combination
