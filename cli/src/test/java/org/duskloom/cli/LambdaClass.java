package org.duskloom.cli;

import java.util.ArrayList;
import java.util.List;
import net.bytebuddy.jar.asm.ClassWriter;
import net.bytebuddy.jar.asm.Handle;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import net.bytebuddy.jar.asm.Type;

/**
 * The class that a lambda or a reference to a method becomes: the interface that is asked for, by a method that calls
 * what stands in the source. One that captures nothing is made once, as the JVM does it.
 */
final class LambdaClass {
    private static final int HIDDEN = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;

    private final String method;
    private final Type face;
    private final Type[] captured;
    private final Type called;
    private final Type meant;
    private final Handle body;
    private final List<Type> bodyTakes = new ArrayList<>();
    private final Type bodyGives;

    /**
     * A lambda as it stands in a class file.
     *
     * @param method what its interface calls the method
     * @param made from what is captured to the interface
     * @param facts what the linker is told: how the method is called, what it calls, and how it is meant where
     *     the first knows only objects
     */
    LambdaClass(String method, Type made, Object... facts) {
        this.method = method;
        this.face = made.getReturnType();
        this.captured = made.getArgumentTypes();
        this.called = (Type) facts[0];
        this.body = (Handle) facts[1];
        this.meant = (Type) facts[2];
        Type owner = Type.getObjectType(body.getOwner());
        if (body.getTag() != Opcodes.H_INVOKESTATIC && !makesAnObject()) {
            bodyTakes.add(owner);
        }
        bodyTakes.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
        this.bodyGives = makesAnObject() ? owner : Type.getReturnType(body.getDesc());
    }

    /** Whether it can be written down, which nearly all can; the others are left to the JVM. */
    boolean isPlain() {
        Type[] given = meant.getArgumentTypes();
        boolean plain = body.getTag() != Opcodes.H_INVOKESPECIAL
                && captured.length + given.length == bodyTakes.size()
                && Conversion.isPlain(bodyGives, meant.getReturnType());
        for (int i = 0; plain && i < given.length; i++) {
            plain = Conversion.isPlain(given[i], bodyTakes.get(captured.length + i));
        }
        return plain;
    }

    /** The place in the code where it is made. */
    void call(String name, MethodVisitor code) {
        if (captured.length == 0) {
            code.visitFieldInsn(Opcodes.GETSTATIC, name, "ONLY", face.getDescriptor());
        } else {
            code.visitMethodInsn(Opcodes.INVOKESTATIC, name, "of", Type.getMethodDescriptor(face, captured), false);
        }
    }

    /**
     * Its class file.
     *
     * @param nest the class among whose members it may call private ones
     * @param source the file that it stands in
     */
    byte[] file(String name, String nest, String source) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(Opcodes.V17, HIDDEN, name, null, "java/lang/Object", new String[] {face.getInternalName()});
        writer.visitSource(source, null);
        writer.visitNestHost(nest);
        writeFields(writer, name);
        if (captured.length == 0) {
            writeOnly(writer, name);
        } else {
            writeMaker(writer, name);
        }
        writeMethod(writer, name);
        return writer.toByteArray();
    }

    private void writeFields(ClassWriter writer, String name) {
        MethodVisitor code = begin(writer, 0, "<init>", takes());
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
        int slot = 1;
        for (int i = 0; i < captured.length; i++) {
            String type = captured[i].getDescriptor();
            writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), type, null, null);
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitVarInsn(captured[i].getOpcode(Opcodes.ILOAD), slot);
            code.visitFieldInsn(Opcodes.PUTFIELD, name, field(i), type);
            slot += captured[i].getSize();
        }
        end(code, Opcodes.RETURN);
    }

    private void writeOnly(ClassWriter writer, String name) {
        String type = face.getDescriptor();
        writer.visitField(Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, "ONLY", type, null, null);
        MethodVisitor code = begin(writer, Opcodes.ACC_STATIC, "<clinit>", "()V");
        makeNew(code, name);
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", "()V", false);
        code.visitFieldInsn(Opcodes.PUTSTATIC, name, "ONLY", type);
        end(code, Opcodes.RETURN);
    }

    private void writeMaker(ClassWriter writer, String name) {
        MethodVisitor code = begin(writer, Opcodes.ACC_STATIC, "of", Type.getMethodDescriptor(face, captured));
        makeNew(code, name);
        int slot = 0;
        for (Type each : captured) {
            code.visitVarInsn(each.getOpcode(Opcodes.ILOAD), slot);
            slot += each.getSize();
        }
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, "<init>", takes(), false);
        end(code, Opcodes.ARETURN);
    }

    private void writeMethod(ClassWriter writer, String name) {
        MethodVisitor code = begin(writer, Opcodes.ACC_PUBLIC, method, called.getDescriptor());
        if (makesAnObject()) {
            makeNew(code, body.getOwner());
        }
        for (int i = 0; i < captured.length; i++) {
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, name, field(i), captured[i].getDescriptor());
        }
        int slot = 1;
        Type[] given = called.getArgumentTypes();
        for (int i = 0; i < given.length; i++) {
            code.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), slot);
            Conversion.write(code, given[i], bodyTakes.get(captured.length + i));
            slot += given[i].getSize();
        }
        code.visitMethodInsn(instruction(), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
        Conversion.write(code, bodyGives, called.getReturnType());
        end(code, called.getReturnType().getOpcode(Opcodes.IRETURN));
    }

    private int instruction() {
        return switch (body.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            case Opcodes.H_INVOKEINTERFACE -> Opcodes.INVOKEINTERFACE;
            default -> Opcodes.INVOKEVIRTUAL;
        };
    }

    private boolean makesAnObject() {
        return body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    }

    private String takes() {
        return Type.getMethodDescriptor(Type.VOID_TYPE, captured);
    }

    private static String field(int place) {
        return "captured" + place;
    }

    private static void makeNew(MethodVisitor code, String name) {
        code.visitTypeInsn(Opcodes.NEW, name);
        code.visitInsn(Opcodes.DUP);
    }

    private static MethodVisitor begin(ClassWriter writer, int access, String name, String type) {
        MethodVisitor code = writer.visitMethod(access, name, type, null, null);
        code.visitCode();
        return code;
    }

    private static void end(MethodVisitor code, int instruction) {
        code.visitInsn(instruction);
        code.visitMaxs(0, 0);
        code.visitEnd();
    }
}
