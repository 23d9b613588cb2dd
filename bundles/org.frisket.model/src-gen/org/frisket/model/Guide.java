/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Guide</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A straight line across the whole bench that things can be laid along.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.Guide#isAcross <em>Across</em>}</li>
 *   <li>{@link org.frisket.model.Guide#getAt <em>At</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface Guide extends EObject {
	/**
	 * Returns the value of the '<em><b>Across</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it runs from left to right; otherwise it runs from top to bottom.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Across</em>' attribute.
	 * @see #setAcross(boolean)
	 * @generated
	 */
	boolean isAcross();

	/**
	 * Sets the value of the '{@link org.frisket.model.Guide#isAcross <em>Across</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Across</em>' attribute.
	 * @see #isAcross()
	 * @generated
	 */
	void setAcross(boolean value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it lies, in mm: its y if it runs across, otherwise its x.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(double)
	 * @generated
	 */
	double getAt();

	/**
	 * Sets the value of the '{@link org.frisket.model.Guide#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(double value);

} // Guide
