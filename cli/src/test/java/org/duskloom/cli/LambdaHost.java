package org.duskloom.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import net.bytebuddy.jar.asm.ClassVisitor;
import net.bytebuddy.jar.asm.ClassWriter;
import net.bytebuddy.jar.asm.Handle;
import net.bytebuddy.jar.asm.MethodVisitor;
import net.bytebuddy.jar.asm.Opcodes;
import net.bytebuddy.jar.asm.Type;

/** Copies a class, with plain calls in the place of what the JVM would link when it comes by. */
final class LambdaHost extends ClassVisitor {
    private static final String OF_LAMBDAS = "java/lang/invoke/LambdaMetafactory";
    private static final String OF_RECORDS = "java/lang/runtime/ObjectMethods";

    private final String name;
    private final Map<String, LambdaClass> lambdas = new LinkedHashMap<>();
    private String nest;
    private String source;

    /**
     * For the class of this name, with slashes.
     *
     * @param writer takes the copy
     */
    LambdaHost(String name, ClassWriter writer) {
        super(Opcodes.ASM9, writer);
        this.name = name;
        this.nest = name;
    }

    /** What the classes of lambdas are called; no compiler of Java puts two of this sign side by side. */
    static String name(String host, int number) {
        return host + "$$" + number;
    }

    /** The class that lists those which may use the private members of this one, once it is copied. */
    String nest() {
        return nest;
    }

    /** The class files of lambdas by name, once the class is copied. */
    Map<String, byte[]> lambdas() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        lambdas.forEach((own, lambda) -> files.put(own, lambda.file(own, nest, source)));
        return files;
    }

    @Override
    public void visitSource(String source, String debug) {
        this.source = source;
        super.visitSource(source, debug);
    }

    @Override
    public void visitNestHost(String nest) {
        this.nest = nest;
        super.visitNestHost(nest);
    }

    @Override
    public MethodVisitor visitMethod(int access, String method, String type, String signature, String[] thrown) {
        return new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, method, type, signature, thrown)) {
            @Override
            public void visitInvokeDynamicInsn(String called, String calledType, Handle linker, Object... facts) {
                if (!isWritten(this, called, calledType, linker, facts)) {
                    super.visitInvokeDynamicInsn(called, calledType, linker, facts);
                }
            }
        };
    }

    private boolean isWritten(MethodVisitor code, String called, String calledType, Handle linker, Object... facts) {
        if (linker.getOwner().equals(OF_RECORDS)) {
            return RecordMethods.write(code, called, name, facts);
        }
        // The other method of that class is for lambdas that are written to streams, or have several interfaces.
        if (!linker.getOwner().equals(OF_LAMBDAS) || !linker.getName().equals("metafactory")) {
            return false;
        }
        LambdaClass lambda = new LambdaClass(called, Type.getMethodType(calledType), facts);
        if (!lambda.isPlain()) {
            return false;
        }
        String own = name(name, lambdas.size() + 1);
        lambdas.put(own, lambda);
        lambda.call(own, code);
        return true;
    }
}
