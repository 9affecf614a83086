using Pattern.Press.Cli;

return CommandLine.Run(args, Console.Out, Console.Error);
