using System.Diagnostics;
using BenchmarkDotNet.Running;
using Pattern.Press.Benchmarks;

// Between two builds the runtime gives memory back to the system and asks for it again in the next, which on a virtual
// machine takes longer than half of a build. Room for a whole build keeps that out of the figures; the runtime takes the
// setting from the environment alone, so the program starts itself with it. Programs that BenchmarkDotNet makes of it take the
// environment over, but not how the command has the compiler.
const string FirstGeneration = "DOTNET_GCgen0size";
if (Environment.GetEnvironmentVariable(FirstGeneration) is null && Environment.ProcessPath is { } program)
{
    // Run by the host, its first argument is this program.
    var own = Path.GetFileNameWithoutExtension(program) == "dotnet" ? new[] { typeof(WholeBuild).Assembly.Location } : [];
    using var again = Process.Start(new ProcessStartInfo(program, [.. own, .. args])
    {
        Environment = { [FirstGeneration] = "0x8000000", ["DOTNET_TieredPGO"] = "0" },
    })!;
    again.WaitForExit();
    return again.ExitCode;
}

if (args is ["quick"])
    Quick.Run(Console.Out);
else
    BenchmarkSwitcher.FromAssembly(typeof(WholeBuild).Assembly).Run(args);
return 0;
