package org.duskloom.cli;

import java.util.List;
import java.util.Map;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import net.bytebuddy.jar.asm.Type;

/** From the type that a lambda is handed to the one that its body takes, and from what that gives back. */
final class Conversion {
    private static final Map<Integer, String> BOXES = Map.of(
            Type.BOOLEAN, "java/lang/Boolean",
            Type.BYTE, "java/lang/Byte",
            Type.CHAR, "java/lang/Character",
            Type.SHORT, "java/lang/Short",
            Type.INT, "java/lang/Integer",
            Type.LONG, "java/lang/Long",
            Type.FLOAT, "java/lang/Float",
            Type.DOUBLE, "java/lang/Double");
    private static final String OBJECT = "java/lang/Object";

    private Conversion() {}

    /** Whether it is nothing, a cast, a box around the same number or out of it, or leaving out what is given back. */
    static boolean isPlain(Type from, Type to) {
        if (to.getSort() == Type.VOID || from.equals(to) || isObject(from) && isObject(to)) {
            return true;
        }
        if (isObject(from)) {
            return from.getInternalName().equals(box(to));
        }
        return isObject(to) && List.of(OBJECT, box(from)).contains(to.getInternalName());
    }

    /** Converts what lies on top of the stack. */
    static void write(MethodVisitor code, Type from, Type to) {
        if (to.getSort() == Type.VOID) {
            leaveOut(code, from);
        } else if (isObject(from) && isObject(to)) {
            if (!from.equals(to) && !to.getInternalName().equals(OBJECT)) {
                code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
            }
        } else if (isObject(from)) {
            String box = box(to);
            code.visitTypeInsn(Opcodes.CHECKCAST, box);
            code.visitMethodInsn(
                    Opcodes.INVOKEVIRTUAL, box, to.getClassName() + "Value", "()" + to.getDescriptor(), false);
        } else if (isObject(to)) {
            String box = box(from);
            code.visitMethodInsn(
                    Opcodes.INVOKESTATIC, box, "valueOf", "(" + from.getDescriptor() + ")L" + box + ";", false);
        }
    }

    private static void leaveOut(MethodVisitor code, Type from) {
        if (from.getSize() > 0) {
            code.visitInsn(from.getSize() == 2 ? Opcodes.POP2 : Opcodes.POP);
        }
    }

    /** The class of objects around such numbers. */
    static String box(Type type) {
        return BOXES.get(type.getSort());
    }

    /** Whether it is no number and no truth value. */
    static boolean isObject(Type type) {
        return type.getSort() == Type.OBJECT || type.getSort() == Type.ARRAY;
    }
}
