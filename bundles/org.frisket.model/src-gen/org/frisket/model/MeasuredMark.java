/**
 */
package org.frisket.model;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Measured Mark</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where a mark was found on the printed sheet.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.MeasuredMark#getMark <em>Mark</em>}</li>
 *   <li>{@link org.frisket.model.MeasuredMark#getX <em>X</em>}</li>
 *   <li>{@link org.frisket.model.MeasuredMark#getY <em>Y</em>}</li>
 *   <li>{@link org.frisket.model.MeasuredMark#isBack <em>Back</em>}</li>
 * </ul>
 *
 * @generated
 */
public interface MeasuredMark extends EObject {
	/**
	 * Returns the value of the '<em><b>Mark</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which of the sheet’s marks, from 0.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mark</em>' attribute.
	 * @see #setMark(int)
	 * @generated
	 */
	int getMark();

	/**
	 * Sets the value of the '{@link org.frisket.model.MeasuredMark#getMark <em>Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mark</em>' attribute.
	 * @see #getMark()
	 * @generated
	 */
	void setMark(int value);

	/**
	 * Returns the value of the '<em><b>X</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm, in the frame that was measured in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>X</em>' attribute.
	 * @see #setX(double)
	 * @generated
	 */
	double getX();

	/**
	 * Sets the value of the '{@link org.frisket.model.MeasuredMark#getX <em>X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X</em>' attribute.
	 * @see #getX()
	 * @generated
	 */
	void setX(double value);

	/**
	 * Returns the value of the '<em><b>Y</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In mm, in the frame that was measured in, downwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Y</em>' attribute.
	 * @see #setY(double)
	 * @generated
	 */
	double getY();

	/**
	 * Sets the value of the '{@link org.frisket.model.MeasuredMark#getY <em>Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y</em>' attribute.
	 * @see #getY()
	 * @generated
	 */
	void setY(double value);

	/**
	 * Returns the value of the '<em><b>Back</b></em>' attribute.
	 * The default value is <code>"false"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it was found on the back, in the frame of the sheet turned over.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Back</em>' attribute.
	 * @see #setBack(boolean)
	 * @generated
	 */
	boolean isBack();

	/**
	 * Sets the value of the '{@link org.frisket.model.MeasuredMark#isBack <em>Back</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Back</em>' attribute.
	 * @see #isBack()
	 * @generated
	 */
	void setBack(boolean value);

} // MeasuredMark
