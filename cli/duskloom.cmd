@echo off
rem Runs duskloom with the Java that JAVA_HOME or the PATH names. Builds it first where that has not been done.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
where /q java
if not defined JAVA_HOME if errorlevel 1 goto nojava
if defined JAVA_HOME if not exist "%JAVA%" goto nojava

set "JAR=%~dp0target\duskloom.jar"
if exist "%JAR%" goto run
pushd "%~dp0.."
call mvn -q -B -DskipTests -pl cli -am package 1>&2
popd
if not exist "%JAR%" goto nojar

:run
"%JAVA%" -XX:+UseSerialGC -XX:-UsePerfData -jar "%JAR%" %*
exit /b %errorlevel%

:nojava
echo duskloom: needs Java 17 or newer: install it, or set JAVA_HOME to where it is 1>&2
exit /b 1

:nojar
echo duskloom: could not be built; it needs Maven 3.8 or newer, and what Maven says is above 1>&2
exit /b 1
