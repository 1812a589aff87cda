package org.duskloom.cli;

import net.bytebuddy.jar.asm.Handle;
import net.bytebuddy.jar.asm.Label;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import net.bytebuddy.jar.asm.Type;

/**
 * The methods of a record that the JVM would put together when they are first called: whether all parts are equal, and
 * a number for tables, the same one. What a record prints is rarely asked for and left to the JVM.
 */
final class RecordMethods {
    private static final int FIRST_PART = 2;

    private RecordMethods() {}

    /**
     * Writes one in the place of the instruction that would have it linked; what that takes lies on the stack.
     *
     * @param facts the record, the names of its parts, and how each is read
     * @return whether it did
     */
    static boolean write(MethodVisitor code, String method, String name, Object... facts) {
        if (method.equals("hashCode")) {
            writeNumber(code, name, facts);
        } else if (method.equals("equals")) {
            writeEquality(code, name, facts);
        } else {
            return false;
        }
        return true;
    }

    private static void writeNumber(MethodVisitor code, String name, Object... facts) {
        code.visitInsn(Opcodes.POP);
        code.visitInsn(Opcodes.ICONST_0);
        for (int i = FIRST_PART; i < facts.length; i++) {
            Type type = Type.getType(((Handle) facts[i]).getDesc());
            code.visitIntInsn(Opcodes.BIPUSH, 31);
            code.visitInsn(Opcodes.IMUL);
            read(code, 0, name, (Handle) facts[i]);
            String holder = Conversion.isObject(type) ? "java/util/Objects" : Conversion.box(type);
            String takes = Conversion.isObject(type) ? "Ljava/lang/Object;" : type.getDescriptor();
            code.visitMethodInsn(Opcodes.INVOKESTATIC, holder, "hashCode", "(" + takes + ")I", false);
            code.visitInsn(Opcodes.IADD);
        }
    }

    /** Ends in both answers by itself, so that nothing of it lies on the stack where branches meet. */
    private static void writeEquality(MethodVisitor code, String name, Object... facts) {
        Label different = new Label();
        Label other = new Label();
        code.visitInsn(Opcodes.POP2);
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitJumpInsn(Opcodes.IF_ACMPNE, other);
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        code.visitLabel(other);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        code.visitVarInsn(Opcodes.ALOAD, 1);
        code.visitTypeInsn(Opcodes.INSTANCEOF, name);
        code.visitJumpInsn(Opcodes.IFEQ, different);
        for (int i = FIRST_PART; i < facts.length; i++) {
            read(code, 0, name, (Handle) facts[i]);
            read(code, 1, name, (Handle) facts[i]);
            compare(code, Type.getType(((Handle) facts[i]).getDesc()), different);
        }
        code.visitInsn(Opcodes.ICONST_1);
        code.visitInsn(Opcodes.IRETURN);
        code.visitLabel(different);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
        code.visitInsn(Opcodes.ICONST_0);
    }

    private static void read(MethodVisitor code, int slot, String name, Handle part) {
        code.visitVarInsn(Opcodes.ALOAD, slot);
        if (slot > 0) {
            code.visitTypeInsn(Opcodes.CHECKCAST, name);
        }
        code.visitFieldInsn(Opcodes.GETFIELD, name, part.getName(), part.getDesc());
    }

    private static void compare(MethodVisitor code, Type type, Label different) {
        switch (type.getSort()) {
            case Type.FLOAT, Type.DOUBLE -> {
                String two = type.getDescriptor() + type.getDescriptor();
                code.visitMethodInsn(Opcodes.INVOKESTATIC, Conversion.box(type), "compare", "(" + two + ")I", false);
                code.visitJumpInsn(Opcodes.IFNE, different);
            }
            case Type.LONG -> {
                code.visitInsn(Opcodes.LCMP);
                code.visitJumpInsn(Opcodes.IFNE, different);
            }
            case Type.OBJECT, Type.ARRAY -> {
                code.visitMethodInsn(
                        Opcodes.INVOKESTATIC,
                        "java/util/Objects",
                        "equals",
                        "(Ljava/lang/Object;Ljava/lang/Object;)Z",
                        false);
                code.visitJumpInsn(Opcodes.IFEQ, different);
            }
            default -> code.visitJumpInsn(Opcodes.IF_ICMPNE, different);
        }
    }
}
