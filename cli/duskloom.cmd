@echo off
rem Runs duskloom with the Java that JAVA_HOME or the PATH names. Among its sources it is built first where that has not been done.
rem Paths stand in quotes, outside of brackets, and are expanded once, so that they may hold blanks, ampersands and per cent signs.
setlocal DisableDelayedExpansion
set "JAVA=%JAVA_HOME%\bin\java.exe"
if not defined JAVA_HOME for %%J in (java.exe) do set "JAVA=%%~$PATH:J"
if not exist "%JAVA%" goto nojava

set "JAR=%~dp0duskloom.jar"
if exist "%~dp0pom.xml" set "JAR=%~dp0target\duskloom.jar"
if exist "%JAR%" goto run
if not exist "%~dp0pom.xml" goto nojar
pushd "%~dp0.."
call mvn -q -B -DskipTests -pl cli -am package 1>&2
popd
if not exist "%JAR%" goto notbuilt

:run
"%JAVA%" -XX:+UseSerialGC -Xms64m -XX:+IgnoreUnrecognizedVMOptions -XX:InlineSmallCode=1000 -XX:Tier3BackEdgeThreshold=6000 -XX:Tier4InvocationThreshold=60000 -XX:Tier4MinInvocationThreshold=100 -XX:Tier4CompileThreshold=200000 -XX:Tier4BackEdgeThreshold=1000000 -XX:CompileCommand=quiet -XX:CompileCommand=CompileThresholdScaling,sun.security.provider.SHA2::implCompress,0.001 -XX:-UsePerfData "-Dduskloom.command=%~0" -jar "%JAR%" %*
exit /b %errorlevel%

:nojava
echo duskloom: needs Java 17 or newer: install it, or set JAVA_HOME to where it is 1>&2
exit /b 1

:nojar
echo duskloom: duskloom.jar is missing beside duskloom.cmd; unpack the download anew 1>&2
exit /b 1

:notbuilt
echo duskloom: could not be built; it needs Maven 3.8 or newer, and what Maven says is above 1>&2
exit /b 1
